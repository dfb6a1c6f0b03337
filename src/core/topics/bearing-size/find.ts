/** From designation to dimensions and back from caliper readings. */
import { isOver } from '../../thresholds/index.ts';
import { bores, boundary, seriesNames, type Series } from './tables/boundary.ts';

export interface Bearing {
  /** Basic designation: series digits and bore code only. */
  readonly designation: string;
  /** [m] */
  readonly bore: number;
  readonly outside: number;
  readonly width: number;
}

export const bearings: readonly Bearing[] = seriesNames.flatMap((series) =>
  bores.map((bore, i) => bearingAt(series, bore, i)),
);

function bearingAt(series: Series, bore: number, code: number): Bearing {
  const [outside, width] = boundary[series][code] ?? [0, 0];
  return {
    designation: `${series}${String(code).padStart(2, '0')}`,
    bore: bore / 1000,
    outside: outside / 1000,
    width: width / 1000,
  };
}

/** @param designation digits only, such as "6205" @returns undefined when the tables hold no such bearing */
export function bearingOf(designation: string): Bearing | undefined {
  return bearings.find((b) => b.designation === designation);
}

export interface Match {
  readonly bearing: Bearing;
  /** Reading minus nominal [m]. */
  readonly bore: number;
  readonly outside: number;
  readonly width: number;
  /** Largest of the three differences, without sign [m]. */
  readonly worst: number;
}

/**
 * Bearings whose three dimensions all lie within `allow` of the readings, best first.
 * Worn rings read large in the bore and small outside, so both signs are accepted.
 * @param readings bore, outside and width as read [m] @param allow largest difference accepted [m]
 * @returns best first, by the largest of the three differences; none when nothing fits
 * Example: 25.1 / 51.9 / 15.0 mm within 0.3 mm -> 6205 alone.
 */
export function matches(
  readings: { readonly bore: number; readonly outside: number; readonly width: number },
  allow: number,
): Match[] {
  return compareAll(readings).filter((m) => !isOver(m.worst, allow));
}

/** The three that come nearest, whether or not they fit. */
export function nearest(readings: Parameters<typeof matches>[0]): Match[] {
  return compareAll(readings).slice(0, 3);
}

function compareAll(r: Parameters<typeof matches>[0]): Match[] {
  return bearings.map((b) => differences(r, b)).sort((a, b) => a.worst - b.worst || sum(a) - sum(b));
}

function differences(r: Parameters<typeof matches>[0], bearing: Bearing): Match {
  const [bore, outside, width] = [r.bore - bearing.bore, r.outside - bearing.outside, r.width - bearing.width];
  return { bearing, bore, outside, width, worst: Math.max(Math.abs(bore), Math.abs(outside), Math.abs(width)) };
}

function sum(m: Match): number {
  return Math.abs(m.bore) + Math.abs(m.outside) + Math.abs(m.width);
}
