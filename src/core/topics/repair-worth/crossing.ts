/** Where the answer turns over. */
import { mostWorthPaying, type Comparison } from './comparison.ts';

const longest = 60;
const shortest = 0.02;

/**
 * Years of service after the repair at which repair and new cost the same.
 * Method: halving the range between a week and 60 years, where the answer differs at its ends.
 * @returns [years]; undefined when the same side wins at both ends
 * Source: arithmetic.
 */
export function serviceToFlip(c: Comparison): number | undefined {
  return crossing((service) => spare({ ...c, service }), shortest, longest);
}

/**
 * Price of the new machine at which repair and new cost the same, all else as it is.
 * @param c the comparison
 * @param price the price `c.newFirst` was worked out from [currency]
 * @returns [currency]; undefined when no price between nothing and 100 times today's turns the answer
 * Source: arithmetic.
 */
export function newPriceToFlip(c: Comparison, price: number): number | undefined {
  const at = (p: number) => spare({ ...c, newFirst: c.newFirst - price + p });
  return crossing(at, 0, 100 * Math.max(price, 1));
}

/** What is left between the most worth paying and what is asked: above zero, repair is cheaper. */
export function spare(c: Comparison): number {
  return mostWorthPaying(c) - c.repair;
}

function crossing(at: (x: number) => number, from: number, to: number): number | undefined {
  let [low, high] = [from, to];
  const start = Math.sign(at(low));
  if (start === Math.sign(at(high))) return undefined;
  for (let k = 0; k < 80; k++) {
    const middle = (low + high) / 2;
    if (Math.sign(at(middle)) === start) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
