import { sourceOf } from './room.ts';

/** Concentrations of carbon monoxide the answer is held against. All as a moment's level, which is stricter than an average. */
export interface Level {
  readonly key: string;
  readonly what: string;
  /** [1] */
  readonly value: number;
  readonly law: string;
  readonly source: string;
}

// prettier-ignore
export const levels: readonly Level[] = [
  { key: 'eu', what: 'EU and Great Britain, 8 h', value: 20e-6, law: '(EU) 2022/431, 16 Mar 2022', source: 'directive-2004-37-ec' },
  { key: 'niosh', what: 'NIOSH (advice), 8 to 10 h', value: 35e-6, law: 'NIOSH REL, 1972', source: 'osha-co' },
  { key: 'osha', what: 'OSHA, 8 h', value: 50e-6, law: '29 CFR 1910.1000 Z-1', source: 'osha-co' },
  { key: 'short', what: 'EU and Great Britain, 15 min', value: 100e-6, law: '(EU) 2022/431, 16 Mar 2022', source: 'directive-2004-37-ec' },
  { key: 'ceiling', what: 'NIOSH, at no time', value: 200e-6, law: 'NIOSH REL, 1972', source: 'osha-co' },
  { key: 'danger', what: 'Danger to life at once', value: 1200e-6, law: 'NIOSH (IDLH)', source: 'earnest-1997' },
];

/** The lowest of them: the one that is passed first [1]. */
export const lowest = Math.min(...levels.map((l) => l.value));
export const ceiling = 200e-6;
export const shortTerm = 100e-6;

/** Carbon monoxide ceilings for new small engines in the USA [kg/J]; a worn or rich engine gives off more. Source: epa-co-ceilings. */
const perKilowattHour = 1e-3 / 3.6e6;
export const emissions = {
  'hand-held': 603 * perKilowattHour,
  'hand-held-small': 805 * perKilowattHour,
  'walk-behind': 610 * perKilowattHour,
} as const;

/** Given off by a hand-held saw of 50 cc and more at a power [W]: G [m3/s]. Source: epa-co-ceilings. */
export function handHeldSource(power: number): number {
  return sourceOf(emissions['hand-held'], power);
}

/** A real engine may give off half or twice the ceiling. Assumption, no published figure. */
export const band = { low: 0.5, high: 2 } as const;
