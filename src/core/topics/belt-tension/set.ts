/** Several V belts side by side: whether one setting of the shafts can put all of them in the window. */
import { step } from '../../contract/formula.ts';
import type { Problem, Value } from '../../contract/result.ts';
import type { Worked } from '../../contract/worked.ts';
import { isOver } from '../../thresholds/index.ts';
import { tensionFromDeflection } from './checks.ts';
import type { BeltInputs, Drive } from './drive.ts';
import * as f from './formulas.ts';
import type { Setting } from './setting.ts';

/**
 * How much the tensions of a set may differ: the width of the window, since moving the shafts changes all belts alike.
 * Formula: dT = T_high - T_low.
 * @param low T_low, least tension of the window [N] @param high T_high, greatest [N], at least T_low @returns dT [N]
 * Example: 100 to 150 N -> 50 N. Source: arithmetic.
 */
export function setAllowance(low: number, high: number): number {
  return high - low;
}

/**
 * The set, from the force that pushes its slackest and its tightest belt by one and the same distance.
 * @returns values with their working; none where the set was not pushed; or the problem that spoils the two figures
 */
export function setValues(i: BeltInputs, d: Drive, s: Setting): Worked<Value[]> | Problem {
  if (!i.set) return { value: [], steps: [] };
  const [slackest, tightest] = [i.setLeast ?? 0, i.setMost ?? 0];
  if (isOver(slackest, tightest)) return { field: 'setLeast', code: 'set-swapped' };
  const tension = (force: number) => tensionFromDeflection(force, d.deflection, d.span, d.extra);
  const [least, most] = [tension(slackest), tension(tightest)];
  if (least <= 0) return { field: 'setLeast', code: 'push-below-stiffness' };
  const [apart, allowed] = [most - least, setAllowance(s.low, s.high)];
  const mixed = isOver(apart, allowed);
  const push = (force: number, value: number) =>
    step(f.fromPush, { F_p: force, k: 1, h: d.deflection, S: d.span, Y: d.extra }, value);
  return {
    value: [
      {
        kind: 'verdict',
        key: 'setVerdict',
        label: 'The set',
        code: mixed ? 'set-mixed' : 'set-together',
        level: mixed ? 'caution' : 'good',
        main: mixed,
        data: { apart, allowed },
        source: 'arithmetic',
      },
      force('setLeastTension', 'Tension of the slackest belt', least),
      force('setMostTension', 'Tension of the tightest belt', most),
      force('setApart', 'They differ by', apart),
      force('setAllowed', 'They may differ by', allowed),
      {
        kind: 'quantity',
        key: 'setShare',
        label: 'Slackest against tightest',
        value: least / most,
        units: ['%', '%'],
        decimals: [0, 0],
      },
    ],
    steps: [
      push(slackest, least),
      push(tightest, most),
      step(f.setApart, { dT: apart, T_a: most, T_b: least }, apart),
      step(f.setAllowed, { dT_w: allowed, T_high: s.high, T_low: s.low }, allowed),
    ],
  };
}

function force(key: string, label: string, value: number): Value {
  return { kind: 'quantity', key, label, value, units: ['N', 'lbf'], decimals: [0, 1] };
}
