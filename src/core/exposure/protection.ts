/** Assigned protection factors. The scales of two countries are not the same, and are never mixed. */
import { isOver } from '../thresholds/index.ts';

export type ProtectionScale = 'us' | 'gb';

export interface Respirator {
  readonly factor: number;
  readonly what: string;
  readonly source: string;
}

// prettier-ignore
export const respirators: Readonly<Record<ProtectionScale, readonly Respirator[]>> = {
  us: [
    { factor: 10, what: 'half mask with filters, or filtering facepiece (N95 or better)', source: 'osha-1910-134' },
    { factor: 25, what: 'powered air with a hood or a loose-fitting facepiece', source: 'osha-1910-134' },
    { factor: 50, what: 'full-face mask, or powered air with a half mask', source: 'osha-1910-134' },
    { factor: 1000, what: 'powered air or supplied air with a full-face mask', source: 'osha-1910-134' },
  ],
  gb: [
    { factor: 4, what: 'FFP1', source: 'hsg53' },
    { factor: 10, what: 'FFP2', source: 'hsg53' },
    { factor: 20, what: 'FFP3, or half mask with P3', source: 'hse-kerbs' },
    { factor: 40, what: 'full-face mask with P3, or powered air TH3 or TM3', source: 'hsg53-full-masks' },
  ],
};

/**
 * The least respirator of a scale whose factor is not below the hazard ratio.
 * @param ratio concentration over limit [1] @returns undefined where none of the scale is enough
 * Example: us, 8 -> 10; us, 10.02 -> 25; gb, 15 -> 20. Source: osha-1910-134, hsg53.
 */
export function leastRespirator(scale: ProtectionScale, ratio: number): Respirator | undefined {
  return respirators[scale].find((r) => !isOver(ratio, r.factor));
}

/** Concentration up to which a respirator may be worn: factor times limit. Example: 10 x 0.05 mg/m3 -> 0.5. Source: osha-1910-134. */
export function mostConcentration(factor: number, limit: number): number {
  return factor * limit;
}

export type FilterSeries = 'N' | 'R' | 'P';

/**
 * Which series of US particle filters may be used. N: never where there is oil. R: with oil, one shift of 8 h. P: with oil, longer.
 * @param oil oil mist in the air @param time the filter is worn in all [s]
 * Example: oil, 2 shifts -> P. Source: niosh-96-101.
 */
export function filterSeries(oil: boolean, time: number): readonly FilterSeries[] {
  if (!oil) return ['N', 'R', 'P'];
  return isOver(time, 8 * 3600) ? ['P'] : ['R', 'P'];
}
