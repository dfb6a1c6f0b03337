/** How long a warmed part stays open while it waits in air. */

/** Heat transfer in still workshop air to the part in a draught or on a bench top [W/(m2·K)]. From memory. */
export const airCooling = { low: 6, usual: 12, high: 25 } as const;

/**
 * Time for a warmed wall to cool from one rise over the room to a smaller one.
 * Formula: t = rho * c * (w / 2) / h * ln(dT_1 / dT_2) (one temperature throughout, Newton's law of cooling).
 * @param wall thickness w, cooled on both faces [m], > 0
 * @param density rho [kg/m3] @param heat c [J/(kg·K)] @param transfer h [W/(m2·K)], > 0
 * @param from dT_1 [K] @param to dT_2 [K]
 * @returns [s]; 0 when it is already cooler than `to` or `to` is not above 0 (then it never closes: callers ask first)
 * Assumes no contact with cold metal: once the cold bearing touches, it is seconds.
 * Source: lumped-cooling.
 */
export function coolingTime(
  wall: number,
  density: number,
  heat: number,
  transfer: number,
  from: number,
  to: number,
): number {
  if (to <= 0 || from <= to) return 0;
  return ((density * heat * wall) / 2 / transfer) * Math.log(from / to);
}
