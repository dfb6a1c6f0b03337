/** Level further off, outdoors over open ground. Walls, and a second saw, make it louder than this. */

/**
 * L_2 = L_1 - 20 log10(r_2 / r_1).
 * @param level L_1 [dB(A)] @param from r_1 [m], where it was read, > 0 @param to r_2 [m] @returns L_2 [dB(A)]; no louder than L_1 inside r_1
 * Example: 105 at 1 m -> 85 at 10 m. Source: inverse-square.
 */
export function levelAt(level: number, from: number, to: number): number {
  return level - 20 * Math.log10(Math.max(1, to / from));
}

/** Distance at which a level has fallen to another: r = r_1 10^((L_1 - L) / 20) [m]; r_1 where it is no louder. Source: inverse-square. */
export function distanceFor(level: number, from: number, wanted: number): number {
  return from * 10 ** (Math.max(0, level - wanted) / 20);
}
