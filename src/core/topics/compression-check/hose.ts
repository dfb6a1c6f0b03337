import { wetModel } from './wet-test.ts';

/**
 * Room inside a gauge hose: V = pi / 4 d^2 L.
 * @param bore d, inside diameter [m], >= 0 @param length L [m], >= 0 @returns V [m3]
 * Example: 3 mm, 400 mm -> 2.83 cm3. Source: geometry.
 */
export function hoseVolume(bore: number, length: number): number {
  return (Math.PI / 4) * bore ** 2 * length;
}

/**
 * What a gauge reads whose check valve sits in the gauge: on every stroke the hose is part of the combustion chamber.
 * Formula: g_h = p ((k V_h + V_c + V) / (V_c + V))^n - p, n = 1.3.
 * @param swept V_h [m3], > 0 @param trapped k, share of the stroke behind the closed exhaust port [1]
 * @param chamber V_c [m3], > 0 @param hose V [m3], >= 0; none leaves the true reading
 * @param air p, pressure outside [Pa], > 0 @returns g_h [Pa], never above the true reading
 * Example: 70 cm3, 0.7, chamber 9.202 cm3, hose 3.5 cm3, air 1 bar -> 6.8 bar for a true 10. Source: wet-test-model.
 */
export function readingThroughHose(swept: number, trapped: number, chamber: number, hose: number, air: number): number {
  return air * ((trapped * swept + chamber + hose) / (chamber + hose)) ** wetModel.exponent - air;
}
