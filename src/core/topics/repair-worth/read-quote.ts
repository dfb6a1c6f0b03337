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
  salesTax,
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
  readonly steps: readonly WorkingStep[];
}

/** The quote as one total, however it was given, with its lines for the page. */
export function readQuote(inputs: WorthInputs): QuoteRead {
  const built = inputs.quoteAs === 'lines' ? buildQuote(inputs) : undefined;
  const total = built ? built.sum.total : roundMoney(inputs.quote ?? 0);
  const toPay = costOfSayingYes(total, inputs.diagnosticFee, inputs.diagnosticCredited);
  const credited = inputs.diagnosticCredited && inputs.diagnosticFee > 0 && inputs.diagnosticFee <= total;
  return {
    total,
    toPay,
    values: [...(built ? quoteValues(built.sum) : []), ...totals(inputs, total, toPay)],
    steps: [
      ...(built ? built.steps : []),
      ...(credited ? [step(feeCredited, { Q_t: total, F: inputs.diagnosticFee }, toPay)] : []),
    ],
  };
}

function buildQuote(inputs: WorthInputs): { readonly sum: QuoteTotal; readonly steps: readonly WorkingStep[] } {
  const lines: readonly QuoteLine[] = inputs.lines ?? [];
  const [h, w] = [inputs.labourHours ?? 0, inputs.labourRate];
  const rules: TaxRules = {
    parts: inputs.taxParts ?? 0,
    labour: inputs.taxLabour ?? 0,
    consumables: inputs.taxConsumables ?? 0,
    itemised: inputs.itemised ?? true,
  };
  const sum = addUpQuote(lines, h * w, inputs.consumables ?? 0, rules, inputs.smallest ?? 0.01);
  const { parts: P, labour: L, consumables: C } = sum.net;
  const prices = lines
    .filter((line) => line.basis !== 'price')
    .map((line) =>
      step(line.basis === 'markup' ? markupPrice : marginPrice, { c: line.amount, m: line.share }, unitPrice(line)),
    );
  const tax = salesTax(sum.net, rules);
  return {
    sum,
    steps: [
      ...prices,
      step(labour, { h, w }, h * w),
      rules.itemised
        ? step(taxByKind, { t_p: rules.parts, P, t_l: rules.labour, L, t_c: rules.consumables, C }, tax)
        : step(taxOnLump, { t: lumpRate(rules), P, L, C }, tax),
      step(quoteTotal, { P, L, C, X: sum.tax }, sum.total),
    ],
  };
}

function quoteValues(sum: QuoteTotal): Value[] {
  const money = (key: string, label: string, value: number): Value => ({ kind: 'money', key, label, value });
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
      rows: sum.lines.map((line) => [line.part, line.quantity, line.price, line.line]),
    },
    money('partsTotal', 'Parts', sum.net.parts),
    money('labourTotal', 'Labor', sum.net.labour),
    money('consumablesTotal', 'Consumables', sum.net.consumables),
    money('taxTotal', 'Tax', sum.tax),
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
