/** The day as the three rules see it, bare and at the ear under the protectors. */
import type { InputsOf } from '../../contract/field.ts';
import { dailyLevel, dose, energy, niosh, osha, oshaLimit, type Period } from './dose.ts';
import type { fields } from './fields.ts';
import { tableDose } from './osha-table.ts';

export type NoiseInputs = InputsOf<typeof fields>;

export interface Day {
  readonly bare: readonly Period[];
  readonly atEar: readonly Period[];
  readonly names: readonly string[];
  readonly oshaDose: number;
  /** Of the levels from 90 dB(A) up alone, for the limit itself. */
  readonly oshaLimitDose: number;
  /** By the printed table, levels rounded up; undefined beyond its end. */
  readonly oshaTableDose: number | undefined;
  readonly nioshDose: number;
  readonly nioshDoseAtEar: number;
  readonly energy: number;
  readonly energyAtEar: number;
  readonly level: number | undefined;
  readonly levelAtEar: number | undefined;
  /** Loudest period of all, and loudest with protectors on [dB(A)]. */
  readonly loudest: number;
  readonly loudestWorn: number | undefined;
}

/** @param reduction what the protectors are counted for [dB] */
export function dayOf(i: NoiseInputs, reduction: number): Day {
  const used = i.periods.filter((p) => p.time > 0);
  const bare = used.map(({ level, time }) => ({ level, time }));
  const atEar = used.map(({ level, time, worn }) => ({ level: worn ? level - reduction : level, time }));
  const worn = i.protector === 'none' ? [] : used.filter((p) => p.worn).map((p) => p.level);
  return {
    bare,
    atEar,
    names: used.map((p) => p.what),
    oshaDose: dose(bare, osha),
    oshaLimitDose: dose(bare, oshaLimit),
    oshaTableDose: tableDose(bare),
    nioshDose: dose(bare, niosh),
    nioshDoseAtEar: dose(atEar, niosh),
    energy: energy(bare),
    energyAtEar: energy(atEar),
    level: dailyLevel(bare),
    levelAtEar: dailyLevel(atEar),
    loudest: Math.max(...bare.map((p) => p.level)),
    loudestWorn: worn.length > 0 ? Math.max(...worn) : undefined,
  };
}
