/** A repair quote, line by line, with tax by kind of line. */
import { roundMoney } from '../../money/index.ts';

/**
 * Price from cost with a markup: the percentage is of the cost.
 * Formula: p = c (1 + m).
 * @param cost c [currency], >= 0
 * @param markup m [1], >= 0
 * @returns p [currency]
 * Example: 64 with 40 % markup -> 89.60.
 * Source: markup-and-margin.
 */
export function priceFromMarkup(cost: number, markup: number): number {
  return cost * (1 + markup);
}

/**
 * Price from cost with a margin: the percentage is of the price.
 * Formula: p = c / (1 - m).
 * @param cost c [currency], >= 0
 * @param margin m [1], 0 to below 1
 * @returns p [currency]
 * Example: 64 with 40 % margin -> 106.67.
 * Source: markup-and-margin.
 */
export function priceFromMargin(cost: number, margin: number): number {
  return cost / (1 - margin);
}

/** Margin that a markup amounts to: m / (1 + m). 40 % markup is 28.57 % margin. Source: markup-and-margin. */
export function marginOfMarkup(markup: number): number {
  return markup / (1 + markup);
}

/** Markup that a margin amounts to: m / (1 - m). 40 % margin is 66.67 % markup. Source: markup-and-margin. */
export function markupOfMargin(margin: number): number {
  return margin / (1 - margin);
}

export type PriceBasis = 'price' | 'markup' | 'margin';

export interface QuoteLine {
  readonly part: string;
  readonly quantity: number;
  readonly amount: number;
  readonly basis: PriceBasis;
  /** Markup or margin [1]; not used when the amount is the price. */
  readonly share: number;
}

/** Price of one piece on a quote line, before it is rounded to what can be charged [currency]. */
export function unitPrice(line: QuoteLine): number {
  if (line.basis === 'markup') return priceFromMarkup(line.amount, line.share);
  return line.basis === 'margin' ? priceFromMargin(line.amount, line.share) : line.amount;
}

export interface TaxRules {
  readonly parts: number;
  readonly labour: number;
  readonly consumables: number;
  /** False: one lump price, which many tax offices tax whole at the parts rate even where labour alone is free. */
  readonly itemised: boolean;
}

export interface Net {
  readonly parts: number;
  readonly labour: number;
  readonly consumables: number;
}

/**
 * Sales tax on an invoice: each kind at its own rate, or the whole at the highest rate when it is not itemised.
 * Formula: X = t_p P + t_l L + t_c C.
 * @param net parts, labour and consumables before tax [currency]
 * @param rules rates [1]
 * @returns X [currency], not rounded
 * Example: parts 25, labour 40, 6 % on parts only -> 1.50; as one lump -> 3.90.
 * Source: state-sales-tax-guides. Which kinds are taxed, the local tax office says.
 */
export function salesTax(net: Net, rules: TaxRules): number {
  if (!rules.itemised) return (net.parts + net.labour + net.consumables) * lumpRate(rules);
  return rules.parts * net.parts + rules.labour * net.labour + rules.consumables * net.consumables;
}

/** The rate a lump price is taxed at: the highest of the three. */
export function lumpRate(rules: TaxRules): number {
  return Math.max(rules.parts, rules.labour, rules.consumables);
}

export interface PricedLine {
  readonly part: string;
  readonly quantity: number;
  /** Of one, as charged [currency]. */
  readonly price: number;
  /** Of them all, as charged [currency]. */
  readonly line: number;
}

export interface QuoteTotal {
  readonly lines: readonly PricedLine[];
  readonly net: Net;
  readonly tax: number;
  /** What the bill says: the sum of the rounded lines, labor, consumables and tax. */
  readonly total: number;
}

/**
 * Adds a quote up. The price of one piece, each line, labor, consumables and tax are rounded where they stand, so
 * that quantity times price is the line and the lines add up to the total.
 * @param lines parts
 * @param labour labour before tax [currency]
 * @param consumables shop consumables before tax [currency]
 * @param rules tax
 * @param smallest smallest amount on a bill [currency]
 * Example: 1.8 h at 95, parts 64 at 40 % margin, 7 % on parts -> 171 + 106.67 + 7.47 = 285.14.
 * Source: arithmetic.
 */
export function addUpQuote(
  lines: readonly QuoteLine[],
  labour: number,
  consumables: number,
  rules: TaxRules,
  smallest = 0.01,
): QuoteTotal {
  const round = (amount: number) => roundMoney(amount, smallest);
  const priced = lines.map((line): PricedLine => {
    const price = round(unitPrice(line));
    return { part: line.part, quantity: line.quantity, price, line: round(line.quantity * price) };
  });
  const parts = round(priced.reduce((sum, line) => sum + line.line, 0));
  const net: Net = { parts, labour: round(labour), consumables: round(consumables) };
  const tax = round(salesTax(net, rules));
  return { lines: priced, net, tax, total: round(net.parts + net.labour + net.consumables + tax) };
}

/**
 * What saying yes adds to what the customer pays. A fee for finding the fault is owed either way, so it
 * counts only when the shop takes it off the bill of a repair that goes ahead.
 * Formula: Q = Q_t - F, not below 0, when credited; Q = Q_t when not.
 * @returns [currency]
 * Source: common-practice.
 */
export function costOfSayingYes(total: number, fee: number, credited: boolean): number {
  return credited ? Math.max(0, total - fee) : total;
}
