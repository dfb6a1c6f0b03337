/** What slurry is by law and chemistry. It is caught and taken away; none of this lets it into a drain. */
import { isOver, isUnder } from '../../thresholds/index.ts';

/** Corrosive hazardous waste in the USA (D002), for watery waste: pH 2 or less, 12.5 or more. Source: rcra-261-22. */
export function isCorrosive(ph: number): boolean {
  return !isUnder(ph, 12.5) || !isOver(ph, 2);
}

/** Inside the range one Washington permit plan lets go: pH 6.5 to 8.5. Source: wa-permit-ph. */
export function withinPermit(ph: number): boolean {
  return !isUnder(ph, 6.5) && !isOver(ph, 8.5);
}

/**
 * Times the water it would take to thin from one pH to another, unbuffered: 10^(from - to) [1].
 * Shows why thinning is no way out, and it is mostly forbidden. Example: 12 to 8.5 -> 3162. Source: arithmetic.
 */
export function thinning(from: number, to: number): number {
  return 10 ** (from - to);
}

/** England, RPS 235: at most 30 m3 in one place, not within 10 m of a watercourse or 50 m of a protected site. Source: ea-rps-235. */
export function englandStorage(
  stored: number,
  watercourse: number,
  protectedSite: number,
): Record<'stored' | 'watercourse' | 'site', boolean> {
  return { stored: !isOver(stored, 30), watercourse: !isUnder(watercourse, 10), site: !isUnder(protectedSite, 50) };
}
