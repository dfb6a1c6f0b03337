/** The shop's own side of a quote. */

/**
 * Labour rate that covers wage, burden and overhead and leaves a margin.
 * Formula: w_h = ((w b + O / (m h)) / u) / (1 - g).
 * @param wage w [currency an hour]
 * @param burden b, wage with its taxes and insurance over bare wage [1], >= 1
 * @param overhead O [currency a year]
 * @param mechanics m [1], >= 1
 * @param paidHours h [h a year each]
 * @param billable u, share of paid hours that reach a bill [1], above 0
 * @param margin g [1], below 1
 * @returns cost of a billable hour and the rate [currency an hour]
 * Example: 28, 1.25, 62,400, 2, 2,080, 75 %, 25 % -> 66.67 and 88.89.
 * Source: common-practice.
 */
export function labourRate(
  wage: number,
  burden: number,
  overhead: number,
  mechanics: number,
  paidHours: number,
  billable: number,
  margin: number,
) {
  const cost = (wage * burden + overhead / (mechanics * paidHours)) / billable;
  return { cost, rate: cost / (1 - margin) };
}

/**
 * Job billed by book time.
 * Formulas: billed = h_b w; earned rate = billed / h_a; efficiency = h_b / h_a.
 * @returns billed [currency], earned rate [currency an hour], efficiency [1]
 * Example: book 2.0 h, taken 2.6 h, at 95 -> 190, 73.08, 0.7692.
 * Source: common-practice.
 */
export function bookTime(bookHours: number, actualHours: number, rate: number) {
  const billed = bookHours * rate;
  return { billed, earned: billed / actualHours, efficiency: bookHours / actualHours };
}

/**
 * Expected cost of a job that is done over until it holds.
 * Formula: C / p; of that, comebacks are C / p - C.
 * @param cost C of one attempt [currency]
 * @param success p, chance that an attempt holds [1], above 0; attempts independent
 * @returns [currency]
 * Example: 180 at 85 % -> 211.76, of which 31.76 comebacks.
 * Source: comeback-expected-value.
 */
export function costUntilItHolds(cost: number, success: number) {
  return { total: cost / success, comebacks: cost / success - cost };
}
