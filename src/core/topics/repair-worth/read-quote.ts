import type { InputsOf } from '../../contract/field.ts';
import { step, type WorkingStep } from '../../contract/formula.ts';
import type { Value } from '../../contract/result.ts';
import type { fields } from './fields.ts';
import { feeCredited, labour, marginPrice, markupPrice, quoteTotal, taxByKind, taxOnLump } from './formulas.ts';
import { roundMoney } from '../../money/index.ts';
import {
  addUpQuote,
  costOfSayingYes,
  lumpRate,
  unitPrice,
  type QuoteLine,
  type QuoteTotal,
  type TaxRules,
} from './quote.ts';

export type WorthInputs = InputsOf<typeof fields>;

export interface QuoteRead {
  readonly total: number;
  /** What saying yes costs from here on. */
  readonly toPay: number;
  readonly values: readonly Value[];
}

/** The quote as one total, however it was given, with its lines for the page. */
export function readQuote(inputs: WorthInputs, working: WorkingStep[]): QuoteRead {
  const built = inputs.quoteAs === 'lines' ? buildQuote(inputs, working) : undefined;
  const total = built ? built.total : roundMoney(inputs.quote ?? 0);
  const toPay = costOfSayingYes(total, inputs.diagnosticFee, inputs.diagnosticCredited);
  if (inputs.diagnosticCredited && inputs.diagnosticFee > 0 && inputs.diagnosticFee <= total)
    working.push(step(feeCredited, { Q_t: total, F: inputs.diagnosticFee }, toPay));
  return {
    total,
    toPay,
    values: [...(built ? quoteValues(built, inputs.lines ?? []) : []), ...totals(inputs, total, toPay)],
  };
}

function buildQuote(inputs: WorthInputs, working: WorkingStep[]): QuoteTotal {
  const lines: readonly QuoteLine[] = inputs.lines ?? [];
  for (const line of lines) {
    if (line.basis === 'price') continue;
    working.push(
      step(line.basis === 'markup' ? markupPrice : marginPrice, { c: line.amount, m: line.share }, unitPrice(line)),
    );
  }
  const [h, w] = [inputs.labourHours ?? 0, inputs.labourRate];
  working.push(step(labour, { h, w }, h * w));
  const rules: TaxRules = {
    parts: inputs.taxParts ?? 0,
    labour: inputs.taxLabour ?? 0,
    consumables: inputs.taxConsumables ?? 0,
    itemised: inputs.itemised ?? true,
  };
  const sum = addUpQuote(lines, h * w, inputs.consumables ?? 0, rules);
  const { parts: P, labour: L, consumables: C } = sum.net;
  working.push(
    rules.itemised
      ? step(taxByKind, { t_p: rules.parts, P, t_l: rules.labour, L, t_c: rules.consumables, C }, sum.tax)
      : step(taxOnLump, { t: lumpRate(rules), P, L, C }, sum.tax),
    step(quoteTotal, { P, L, C, X: sum.tax }, sum.exact),
  );
  return sum;
}

function quoteValues(sum: QuoteTotal, lines: readonly QuoteLine[]): Value[] {
  const money = (key: string, label: string, value: number, note?: string): Value => ({
    kind: 'money',
    key,
    label,
    value: roundMoney(value),
    ...(note ? { note } : {}),
  });
  return [
    {
      kind: 'table',
      key: 'quoteLines',
      label: 'Parts on the quote',
      columns: [
        { key: 'part', label: 'Part' },
        { key: 'quantity', label: 'Quantity' },
        { key: 'price', label: 'Price of one', money: true },
        { key: 'line', label: 'Line', money: true },
      ],
      rows: lines.map((line) => [
        line.part,
        line.quantity,
        roundMoney(unitPrice(line)),
        roundMoney(line.quantity * unitPrice(line)),
      ]),
    },
    money('partsTotal', 'Parts', sum.net.parts),
    money('labourTotal', 'Labor', sum.net.labour),
    money('consumablesTotal', 'Consumables', sum.net.consumables),
    money('taxTotal', 'Tax', sum.tax),
    ...(sum.rounding === 0
      ? []
      : [
          money(
            'rounding',
            'Rounding',
            sum.rounding,
            'The bill is rounded once, at its total; this is the cent between that and its rounded lines.',
          ),
        ]),
  ];
}

function totals(inputs: WorthInputs, total: number, toPay: number): Value[] {
  const owed = inputs.diagnosticFee > 0 && !inputs.diagnosticCredited;
  return [
    {
      kind: 'money',
      key: 'quoteTotal',
      label: 'Quote',
      value: total,
      ...(owed
        ? { note: 'The fee for finding the fault is owed whichever way you choose, so it is not counted.' }
        : {}),
    },
    { kind: 'money', key: 'toPay', label: 'What saying yes costs', value: roundMoney(toPay) },
  ];
}
