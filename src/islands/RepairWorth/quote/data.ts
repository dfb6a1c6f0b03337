/** The figures of a quote a customer may see, taken from the answer. Cost prices, markups and margins stay behind. */
import type { Inputs } from '../../../core/contract/field.ts';
import { roundMoney } from '../../../core/money/index.ts';
import { valueOf, type Answer } from '../../../core/contract/result.ts';

export interface QuotePart {
  readonly name: string;
  readonly quantity: number;
  readonly price: number;
  readonly line: number;
}

export type Advice = 'worth-repairing' | 'buy-new' | 'too-close-to-call' | 'engine-in-doubt' | 'no-repair-worth-it';

export interface QuoteData {
  /** Nothing when the quote is one total. */
  readonly parts: readonly QuotePart[];
  readonly labourHours: number | undefined;
  readonly labour: number | undefined;
  readonly consumables: number | undefined;
  readonly tax: number | undefined;
  /** False: parts and labor are sold as one price and must not stand apart. */
  readonly itemised: boolean;
  readonly total: number;
  readonly fee: number;
  readonly feeCredited: boolean;
  /** Still to pay once the fee has been paid. */
  readonly toPay: number;
  readonly engineChecked: boolean;
  readonly service: { readonly amount: number; readonly in: 'years' | 'hours' };
  readonly asIs: number;
  readonly newPrice: number;
  readonly tradeIn: number;
  /** Unknown when the new machine is given year by year. */
  readonly newLife: number | undefined;
  readonly repairYearly: number;
  readonly newYearly: number;
  readonly advice: Advice;
}

export function quoteData(answer: Answer, inputs: Inputs): QuoteData {
  const money = (key: string): number | undefined => {
    const found = answer.values.find((v) => v.key === key);
    return found?.kind === 'money' ? found.value : undefined;
  };
  const must = (key: string) => valueOf(answer, key, 'money').value;
  const given = (key: string): number => (typeof inputs[key] === 'number' ? inputs[key] : 0);
  const byLines = inputs['quoteAs'] === 'lines';
  const table = answer.values.find((v) => v.key === 'quoteLines');
  const parts =
    table?.kind === 'table'
      ? table.rows.map(([name, quantity, price, line]) => ({
          name: String(name),
          quantity: Number(quantity),
          price: Number(price),
          line: Number(line),
        }))
      : [];
  const byHours = inputs['serviceAs'] === 'hours';
  return {
    parts,
    labourHours: byLines ? given('labourHours') : undefined,
    labour: money('labourTotal'),
    consumables: money('consumablesTotal'),
    tax: money('taxTotal'),
    itemised: inputs['itemised'] !== false,
    total: must('quoteTotal'),
    fee: given('diagnosticFee'),
    feeCredited: inputs['diagnosticCredited'] === true,
    toPay: must('toPay'),
    engineChecked: inputs['engine'] === 'good',
    service: byHours ? { amount: given('serviceHours'), in: 'hours' } : { amount: given('serviceYears'), in: 'years' },
    asIs: given('asIs'),
    newPrice: given('newPrice'),
    tradeIn: given('tradeIn'),
    newLife: Array.isArray(inputs['newYears']) && inputs['newYears'].length > 0 ? undefined : given('newLife'),
    repairYearly: must('repairYearly'),
    newYearly: must('newYearly'),
    advice: valueOf(answer, 'verdict', 'verdict').code as Advice,
  };
}

export interface QuoteLine {
  readonly kind: 'part' | 'lump' | 'labour' | 'consumables' | 'tax';
  /** Of a part. */
  readonly name?: string;
  readonly quantity?: number;
  readonly price?: number;
  /** Missing where a lump price covers it. */
  readonly amount?: number;
}

/**
 * What is paid for, line by line, in the order of the bill; the same for paper and file. Every line is an amount as
 * charged: quantity times price is the line, and the lines add up to the total.
 */
export function quoteLines(q: QuoteData): QuoteLine[] {
  const { labour, consumables, tax, total } = q;
  if (labour === undefined || tax === undefined) return [{ kind: 'lump', amount: total }];
  const taxed: QuoteLine[] = tax === 0 ? [] : [{ kind: 'tax', amount: tax }];
  if (!q.itemised)
    return [
      { kind: 'lump', amount: roundMoney(total - tax) },
      ...q.parts.map((p) => ({ kind: 'part', name: p.name, quantity: p.quantity }) as const),
      ...taxed,
    ];
  return [
    ...q.parts.map(
      (p) => ({ kind: 'part', name: p.name, quantity: p.quantity, price: p.price, amount: p.line }) as const,
    ),
    ...(labour === 0
      ? []
      : [
          {
            kind: 'labour',
            amount: labour,
            ...(q.labourHours === undefined ? {} : { quantity: q.labourHours }),
          } as const,
        ]),
    ...(consumables ? [{ kind: 'consumables', amount: consumables } as const] : []),
    ...taxed,
  ];
}
