/** How many random tries a property gets: the full number in `npm test`, a tenth while writing. */
import process from 'node:process';

const share = process.env['ALMANAC_RUNS'] === 'full' ? 1 : 0.1;

/** @param full tries of a full run @returns tries of this run, at least 10 */
export function runs(full: number): number {
  return Math.max(Math.min(10, full), Math.round(full * share));
}
