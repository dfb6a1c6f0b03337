/**
 * A small documented source of random numbers, so that a simulation can be repeated anywhere.
 * The minimal standard generator of Park and Miller with the multiplier of 1993:
 * x -> 48271 x mod (2^31 - 1). Every product stays below 2^53, so plain numbers hold it exactly.
 */
const modulus = 2147483647;
const multiplier = 48271;

/**
 * A generator of numbers strictly between 0 and 1.
 * @param seed any whole number; it is brought into 1 ... 2^31 - 2
 * @returns a function that gives the next number
 * Check: from seed 1 the 10,000th x is 399268537. Example: randomFrom(1)() * 2147483647 -> 48271.
 * Source: park-miller-generator.
 */
export function randomFrom(seed: number): () => number {
  let x = Math.abs(Math.trunc(seed)) % modulus || 1;
  return () => {
    x = (x * multiplier) % modulus;
    return x / modulus;
  };
}

/**
 * A number from a triangle that peaks at `middle` and ends at middle (1 - spread) and middle (1 + spread).
 * Formula: inverse of the triangle's distribution, at u.
 * @param middle peak [any unit]
 * @param spread half the width as a share of the peak [1], 0 to below 1
 * @param u a number between 0 and 1
 * @returns in the unit of `middle`
 * Example: triangle(100, 0.3, 0.5) -> 100. Example: triangle(100, 0.3, 0) -> 70.
 * Source: arithmetic.
 */
export function triangle(middle: number, spread: number, u: number): number {
  return middle * (1 + spread * (u < 0.5 ? Math.sqrt(2 * u) - 1 : 1 - Math.sqrt(2 * (1 - u))));
}
