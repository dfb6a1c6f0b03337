/** How fast limits are looked up: every usual seat and a spread of other zones, over sizes from 1 to 3150 mm. */
import { fitOf, housingSeats, limitsAt, shaftSeats } from '../../src/core/topics/limits-fits/index.ts';

export interface Bench {
  readonly name: string;
  /** Does the work once and says how many operations that was. */
  readonly run: () => number;
}

const zones = [...shaftSeats, ...housingSeats, 'a11', 'cd8', 'zc7', 'ZA8', 'T7', 'JS11'];
const sizes = Array.from({ length: 997 }, (_, i) => 0.001 + (3.149 * i) / 996);

/** Summed so that no look-up can be left out as unused. */
let sum = 0;

function lookUp(): number {
  for (const zone of zones) for (const size of sizes) sum += limitsAt(size, zone)?.upper ?? 0;
  return zones.length * sizes.length;
}

function pair(): number {
  for (const size of sizes) {
    const [hole, shaft] = [limitsAt(size, 'H7'), limitsAt(size, 'k6')];
    if (hole && shaft) sum += fitOf(hole, shaft).mean;
  }
  return sizes.length;
}

export const benches: readonly Bench[] = [
  { name: 'limits of a zone at a size', run: lookUp },
  { name: 'fit of a hole and a shaft', run: pair },
];

/** What the benches added up to, for whoever wants to see that they worked. */
export function checksum(): number {
  return sum;
}
