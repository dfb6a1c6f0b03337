/** Chance with a seed, so that what was found once is found again. */

export interface Chance {
  /** 0 up to, not including, 1. */
  readonly next: () => number;
  /** A whole number from 0 up to, not including, `below`. */
  readonly below: (below: number) => number;
  readonly oneOf: <T>(list: readonly T[]) => T;
}

/** A 32-bit counter stirred by multiplication (the "splitmix" way); good enough to vary inputs, not for secrets. */
export function chance(seed: number): Chance {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x9e3779b9) >>> 0;
    let x = state;
    x = Math.imul(x ^ (x >>> 16), 0x21f0aaad);
    x = Math.imul(x ^ (x >>> 15), 0x735a2d97);
    return ((x ^ (x >>> 15)) >>> 0) / 2 ** 32;
  };
  const below = (n: number) => Math.floor(next() * n);
  return {
    next,
    below,
    oneOf: <T>(list: readonly T[]): T => {
      if (list.length === 0) throw new Error('Nothing to choose from.');
      return list[below(list.length)] as T;
    },
  };
}
