/** The leak test: how fast the pressure goes, and what that says. */
import type { InputsOf } from '../../contract/field.ts';
import { step } from '../../contract/formula.ts';
import type { Value } from '../../contract/result.ts';
import type { Worked } from '../../contract/worked.ts';
import { isOver, isUnder } from '../../thresholds/index.ts';
import type { fields } from './fields.ts';
import * as f from './formulas.ts';
import { leakFlow, timeForTenth } from './leak.ts';

/** A tight engine takes so long to lose a tenth, a doubtful one so long [s]. Source: common-practice. */
export const tightTenth = 600;
export const doubtfulTenth = 60;
/** More than this lifts good seals [Pa]. Source: common-practice. */
export const pumpedMost = 50e3;

/** What the leak test says: values and verdict; none where none was done. */
export function leakValues(i: InputsOf<typeof fields>, air: number): Worked<Value[]> {
  if (!i.leak) return { value: [], steps: [] };
  const [pumped, lost, watched] = [i.pumped ?? 0, i.lost ?? 0, i.watched ?? 0];
  const tenth = timeForTenth(pumped, lost, watched);
  const still = !Number.isFinite(tenth);
  // A gauge that stood still in ten seconds has not yet shown ten minutes.
  const [code, level] = isOver(pumped, pumpedMost)
    ? (['pumped-too-high', 'caution'] as const)
    : isUnder(tenth, doubtfulTenth)
      ? (['leak-found', 'caution'] as const)
      : isUnder(tenth, tightTenth)
        ? (['leak-slow', 'note'] as const)
        : isUnder(watched, shortWatch)
          ? (['leak-watch-on', 'note'] as const)
          : (['leak-none', 'good'] as const);
  const flow = i.space === undefined ? undefined : leakFlow(i.space, lost, watched, air);
  return {
    value: [
      { kind: 'verdict', key: 'leakVerdict', label: 'Leak test', code, level, source: 'common-practice' },
      ...(still
        ? []
        : [
            {
              kind: 'quantity' as const,
              key: 'tenth',
              label: 'A tenth is lost in, at that pace',
              value: tenth,
              units: ['s', 's'] as const,
              decimals: [0, 0] as const,
            },
          ]),
      ...(flow === undefined
        ? []
        : [
            {
              kind: 'quantity' as const,
              key: 'flow',
              label: 'Air lost',
              value: flow,
              units: ['L/min', 'ft3/min'] as const,
              figures: 2,
              note: 'A 70 cm³ two-stroke breathes about 38 L/min at idle.',
            },
          ]),
    ],
    steps: [
      ...(still ? [] : [step(f.tenth, { g_p: pumped, t: watched, dg: lost }, tenth)]),
      ...(flow === undefined ? [] : [step(f.leakRate, { V: i.space ?? 0, dg: lost, p: air, t: watched }, flow)]),
    ],
  };
}

/** Below this a small fall can't be told from none [s]. Source: forestry-magazine-saw-test, which watches so long. */
export const shortWatch = 10;
