/** What an hour costs: the shop's own hour, and a machine's by public rate books. Those were not made for saws: they give the shape, not the figure. */

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

/**
 * Repairs paid up to a number of hours.
 * Formula: C = k P (h / h_1)^e.
 * @param price P, new [currency]
 * @param share k, share of the price spent by h_1 hours [1]
 * @param exponent e [1]; above 1 repairs grow with age
 * @param hours h [h], >= 0
 * @param unit h_1 [h], > 0
 * @returns C [currency]
 * Example: k = 0.007, e = 2, per 1000 h, price 50,000, 1400 h -> 686.
 * Source: asabe-ep496 (form; its figures for saws do not exist).
 */
export function repairsSoFar(price: number, share: number, exponent: number, hours: number, unit: number): number {
  return price * share * (hours / unit) ** exponent;
}

/**
 * Cost of ownership in an hour: loss of value and money tied up.
 * Formulas: D = P (1 - s) / h_L; N = h_L / h_y; average value share v = ((N - 1)(1 + s) + 2) / (2 N); F = P v i / h_y.
 * @param price P [currency]
 * @param salvage s, share of the price left at the end [1]
 * @param lifeHours h_L [h]
 * @param hoursPerYear h_y [h a year]
 * @param rate i [1 a year]
 * @returns D and F [currency an hour], v [1], N [years]
 * Example: 3,200, 15 %, 1,500 h, 500 h a year, 5 % -> 1.8133 and 0.22933.
 * Source: usace-ep-1110-1-8 (from memory).
 */
export function ownershipPerHour(
  price: number,
  salvage: number,
  lifeHours: number,
  hoursPerYear: number,
  rate: number,
) {
  const years = lifeHours / hoursPerYear;
  const average = ((years - 1) * (1 + salvage) + 2) / (2 * years);
  return {
    years,
    average,
    depreciation: (price * (1 - salvage)) / lifeHours,
    money: (price * average * rate) / hoursPerYear,
  };
}

/**
 * Repair cost of an hour from a rate book's factors.
 * Formula: P k_r k_e k_l / h_L.
 * @param price P [currency], without tyres
 * @param repair k_r, repair factor [1]
 * @param economic k_e, price-level factor [1]
 * @param area k_l, labour factor of the region [1]
 * @param lifeHours h_L [h]
 * @returns [currency an hour]
 * Example: 3,200, 0.6, 1.15, 1.1, 1,500 h -> 1.6192.
 * Source: usace-ep-1110-1-8.
 */
export function repairPerHour(
  price: number,
  repair: number,
  economic: number,
  area: number,
  lifeHours: number,
): number {
  return (price * repair * economic * area) / lifeHours;
}

/**
 * Hourly cost of a machine, owned, working and standing by.
 * Formulas: ownership = D + F 40/h; work = ownership + O; standby = D/2 + F.
 * @param depreciation D [currency an hour]
 * @param money F, money tied up, for a 40-hour week [currency an hour]
 * @param operating O [currency an hour]
 * @param weekHours h [h a week]
 * @returns [currency an hour]
 * Example: 46.39, 16.96, 91.74 -> at 40 h 63.35 owned and 155.09 at work, 149.44 at 60 h, standby 40.16.
 * Source: usace-ep-1110-1-8.
 */
export function hourlyCost(depreciation: number, money: number, operating: number, weekHours: number) {
  const ownership = depreciation + (money * 40) / weekHours;
  return { ownership, work: ownership + operating, standby: depreciation / 2 + money };
}

/**
 * Book value that falls by the same share each year.
 * Formula: B (1 - d)^t.
 * @returns [currency]; a book value is no market value and decides nothing here
 * Example: 900, 40 %, 4 years -> 116.64.
 * Source: engineering-economy-factors.
 */
export function decliningValue(price: number, share: number, years: number): number {
  return price * (1 - share) ** years;
}

/**
 * Book value that falls by the same amount each year to nothing.
 * Formula: B (1 - t / n), not below 0.
 * @returns [currency]
 * Example: 1,500 over 15 years, after 6 -> 900; those over 4 more years, after 2 -> 450.
 * Source: engineering-economy-factors.
 */
export function straightLineValue(price: number, life: number, years: number): number {
  return price * Math.max(0, 1 - years / life);
}
