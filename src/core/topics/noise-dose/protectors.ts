/** What a hearing protector may be counted for: the label is measured on people who were helped to put it on. */

export type Kind = 'muff' | 'foam' | 'other';

/** Share of the NRR that NIOSH counts. Source: niosh-derating. */
export const nioshShare: Readonly<Record<Kind, number>> = { muff: 0.75, foam: 0.5, other: 0.3 };

/** Half of what is left: (NRR - 7) / 2, for levels read in dB(A) [dB]. Below nothing counts as it comes; see `credited`. Source: osha-nrr-field. */
export function fieldReduction(nrr: number): number {
  return (nrr - 7) / 2;
}

/** For levels read in dB(C): NRR / 2 [dB]. Source: osha-nrr-field. */
export function fieldReductionC(nrr: number): number {
  return nrr / 2;
}

/** The label as it stands, for levels read in dB(A): NRR - 7 [dB]. Source: osha-nrr-field. */
export function labelReduction(nrr: number): number {
  return nrr - 7;
}

/** Plugs under muffs: the higher label and 5 dB more, less 7 for dB(A) [dB]. Example: 20 and 12 -> 18. Source: osha-nrr-field. */
export function dualReduction(nrr: number, second: number): number {
  return Math.max(nrr, second) + 5 - 7;
}

/** NIOSH: k NRR - 7 for levels read in dB(A) [dB]. Example: muff 28 -> 14. Source: niosh-derating. */
export function nioshReduction(nrr: number, kind: Kind): number {
  return nioshShare[kind] * nrr - 7;
}

/** SNR, which belongs to a level in dB(C): SNR - (L_C - L_A) off the level in dB(A) [dB]. Source: hse-protectors. */
export function snrReduction(snr: number, cMinusA: number): number {
  return snr - cMinusA;
}

/**
 * H, M and L: PNR = M - (H - M)/4 (d - 2) for d <= 2, else M - (M - L)/8 (d - 2), with d = L_C - L_A.
 * @returns [dB] off the level in dB(A)
 * Example: 25, 19, 13 and 0.2 -> 21.7. Source: hse-protectors.
 */
export function hmlReduction(high: number, middle: number, low: number, cMinusA: number): number {
  const slope = cMinusA <= 2 ? (high - middle) / 4 : (middle - low) / 8;
  return middle - slope * (cMinusA - 2);
}

/** Britain takes 4 dB off a label's figure, for how protectors are really worn [dB]. Source: hse-protectors. */
export const realUse = 4;

/** What may be counted: a reduction below nothing is no protection, and no harm either. */
export function credited(reduction: number): number {
  return Math.max(0, reduction);
}

/** Levels of octave bands added up: 10 log10(sum of 10^(L/10)) [dB]. Source: hse-protectors. */
export function bandSum(levels: readonly number[]): number {
  return 10 * Math.log10(levels.reduce((sum, l) => sum + 10 ** (l / 10), 0));
}
