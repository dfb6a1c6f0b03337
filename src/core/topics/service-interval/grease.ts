import { isOver } from '../../thresholds/index.ts';

/**
 * Hours between greasings of a bearing with a nipple.
 * Formula: t = k (14e6 / (n sqrt(d)) - 4 d) f_T f_L f_U, n in 1/min, d in mm, t in h.
 * @param rotation n [1/s], > 0
 * @param bore d [m], > 0
 * @param kind k [1]: 10 deep-groove ball, 5 cylindrical or needle, 1 spherical, tapered or thrust
 * @param temperature f_T [1]: 1, 0.5, 0.25, 0.125 at up to 55, 70, 85, 100 °C
 * @param load f_L [1]: 1, 0.5, 0.25
 * @param surroundings f_U [1]: 1 clean, 0.5 to 0.7 normal, 0.2 to 0.5 heavy dirt or water
 * @returns t [s]; 0 when the bearing turns too fast for the formula
 * Sealed-for-life bearings are replaced, not greased.
 * Example: 4500 1/min, 25 mm, 10, 0.5, 1, 0.3 -> 783.33 h.
 * Source: relubrication-formula.
 */
export function greaseInterval(
  rotation: number,
  bore: number,
  kind: number,
  temperature: number,
  load: number,
  surroundings: number,
): number {
  const [perMinute, millimetres] = [rotation * 60, bore * 1000];
  return (
    Math.max(
      0,
      kind * (14e6 / (perMinute * Math.sqrt(millimetres)) - 4 * millimetres) * temperature * load * surroundings,
    ) * 3600
  );
}

/** Highest bearing temperature [°C] with the share of the interval that is left, as published. */
const steps = [
  [55, 1],
  [70, 0.5],
  [85, 0.25],
  [100, 0.125],
] as const;

/**
 * What the temperature of the bearing leaves of the interval between greasings: half for every 15 K above 55 °C.
 * @param temperature of the outer ring as it runs [K]
 * @returns f_T [1]; undefined above 100 °C, where the rule ends and an ordinary grease does too
 * Example: 55 °C -> 1; 56 °C -> 0.5; 85 °C -> 0.25.
 * Source: relubrication-formula.
 */
export function temperatureFactor(temperature: number): number | undefined {
  return steps.find(([upTo]) => !isOver(temperature, upTo + 273.15))?.[1];
}
