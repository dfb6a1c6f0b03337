/** Reliability other than nine in ten, by the three-parameter Weibull figures of shigley-ratings. */
const [x0, spread, shape] = [0.02, 4.439, 1.483];

/**
 * Catalogue rating for a reliability.
 * Formula: C = a_f * F * (x_D / (x_0 + (theta - x_0) * ln(1 / R)^(1 / b)))^(1/3).
 * @param load F [N] @param service a_f [1] @param multiple x_D, wanted life over a million revolutions @param reliability R, 0 to 1
 * Example: 1.898 kN, 1.2, 540, 0.9 -> 18.59 kN (Shigley problem 11-1).
 */
export function ratingForReliability(load: number, service: number, multiple: number, reliability: number): number {
  return service * load * Math.cbrt(multiple / (x0 + spread * Math.log(1 / reliability) ** (1 / shape)));
}

/** Reliability a rating gives. Example: 19.5 kN for the case above -> 0.919. 1 when the life is shorter than any failure. */
export function reliabilityOf(rating: number, load: number, service: number, multiple: number): number {
  const x = multiple * ((service * load) / rating) ** 3;
  return x <= x0 ? 1 : Math.exp(-(((x - x0) / spread) ** shape));
}
