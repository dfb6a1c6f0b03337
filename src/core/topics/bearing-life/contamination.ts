/** Contamination factor e_C from clean to slurry. Source: iso-281-contamination. */

import { isUnder } from '../../thresholds/index.ts';
import { largePitch } from './life.ts';

export const levels = [
  { value: 'extreme', label: 'As clean as the assembly room', small: [1, 1], large: [1, 1] },
  { value: 'high', label: 'Sealed and greased for life, seals whole', small: [0.6, 0.8], large: [0.8, 0.9] },
  { value: 'normal', label: 'Shielded, dry and swept', small: [0.5, 0.6], large: [0.6, 0.8] },
  { value: 'slight', label: 'A little dust gets in', small: [0.3, 0.5], large: [0.4, 0.6] },
  { value: 'typical', label: 'No seal, dust and wear from around', small: [0.1, 0.3], large: [0.2, 0.4] },
  { value: 'severe', label: 'Worn seal, splash of slurry', small: [0, 0.1], large: [0, 0.1] },
  { value: 'very-severe', label: 'Failed seal, slurry in the bearing', small: [0, 0], large: [0, 0] },
] as const;

export type Level = (typeof levels)[number]['value'];

/**
 * Cleanliness factor e_C from the table.
 * @param level what gets in @param pitch mean diameter [m]; the table changes at 100 mm, which counts as large @returns [low, high], 0 to 1
 * Example: sealed and greased for life, 38.5 mm -> 0.6 to 0.8. Source: iso-281-contamination.
 */
export function cleanliness(level: Level, pitch: number): readonly [number, number] {
  const row = levels.find((l) => l.value === level) ?? levels[levels.length - 1] ?? levels[0];
  return isUnder(pitch, largePitch) ? row.small : row.large;
}
