import { isUnder } from '../../thresholds/index.ts';

/**
 * Oil in a cylinder does two things to a compression gauge: it seals the rings for a moment, and it takes up room.
 * Oil does not give way, so what lies on the crown makes the combustion chamber smaller and the reading higher in a
 * sound engine too. In a car that is a few percent; in a saw, whose chamber holds some 9 cm3, it decides the reading.
 */

/** Exponent of the compression, and the share of the stroke behind the closed exhaust port. Source: wet-test-model (memory). */
export const wetModel = {
  exponent: 1.3,
  trapped: 0.7,
  /** Gives the smallest chamber, so the most that oil alone can do. */
  trappedLeast: 0.6,
} as const;

/** Most oil the test bears, as a share of the swept volume: 0.35 mL in 70 cm3. Keeps what oil alone does to about 5 %. Our choice. */
export const oilShareMost = 0.005;

/**
 * Combustion chamber of an engine from its own dry reading.
 * Formula: V_c = k V_h / (((g + p) / p)^(1/n) - 1), n = 1.3.
 * @param swept V_h [m3], > 0 @param trapped k, share of the stroke behind the closed exhaust port [1]
 * @param gauge g, dry reading [Pa], > 0; at 0 the chamber is without end (Infinity)
 * @param air p, pressure outside [Pa], > 0 @returns V_c [m3]
 * Example: 70 cm3, 0.7, 10 bar, air 1 bar -> 9.2 cm3. Source: wet-test-model.
 */
export function chamberVolume(swept: number, trapped: number, gauge: number, air: number): number {
  return (trapped * swept) / (((gauge + air) / air) ** (1 / wetModel.exponent) - 1);
}

/**
 * What the gauge would read if the oil only took up room and sealed nothing.
 * Formula: g_w = p ((k V_h + V_c - V_o) / (V_c - V_o))^n - p.
 * @param swept V_h [m3] @param trapped k [1] @param chamber V_c [m3] @param oil V_o [m3], < V_c; from V_c on there is no room
 *   left to close on and the answer is Infinity
 * @param air p [Pa] @returns g_w [Pa]
 * Example: 70 cm3, 0.7, chamber 9.202 cm3, 1 mL, air 1 bar -> 11.49 bar. Source: wet-test-model.
 */
export function readingWithOil(swept: number, trapped: number, chamber: number, oil: number, air: number): number {
  if (!isUnder(oil, chamber)) return Infinity;
  return air * ((trapped * swept + chamber - oil) / (chamber - oil)) ** wetModel.exponent - air;
}
