/** Reading back: from what was measured to the tension, a verdict and what to do. */
import { isOver, isUnder } from '../../thresholds/index.ts';
import { step, type WorkingStep } from '../../contract/formula.ts';
import type { Problem, Value } from '../../contract/result.ts';
import { centreMove, tensionFromDeflection, tensionFromFrequency, tensionFromStretch } from './checks.ts';
import type { BeltInputs, Drive } from './drive.ts';
import * as f from './formulas.ts';
import { lifeShare } from './life.ts';
import type { Setting } from './setting.ts';

/** Over the window by up to this factor a belt is called tight, above it too tight. It is the first-fit factor; our choice. */
const tightLimit = 1.33;

/**
 * A reading held against the window: verdict and values [N]; none without a reading, a problem where it can't be
 * read.
 */
export function readingValues(i: BeltInputs, d: Drive, s: Setting, working: WorkingStep[]): Value[] | Problem {
  if (i.reading === 'none') return [];
  const measured = measuredTension(i, d, working);
  if (typeof measured !== 'number') return measured;
  const code = isUnder(measured, s.low)
    ? 'belt-slack'
    : !isOver(measured, s.high)
      ? 'belt-right'
      : !isOver(measured, s.high * tightLimit)
        ? 'belt-tight'
        : 'belt-too-tight';
  const level = code === 'belt-right' ? 'good' : code === 'belt-tight' ? 'note' : 'caution';
  const values: Value[] = [
    {
      kind: 'verdict',
      key: 'verdict',
      label: 'Verdict',
      code,
      level,
      main: true,
      data: { measured, low: s.low, high: s.high },
    },
    {
      kind: 'quantity',
      key: 'measured',
      label: 'Tension measured, one belt or rib',
      value: measured,
      units: ['N', 'lbf'],
      decimals: [0, 1],
      main: true,
    },
    {
      kind: 'quantity',
      key: 'shareOfAim',
      label: 'Share of the tension to aim at',
      value: measured / s.aim,
      units: ['%', '%'],
      decimals: [0, 0],
    },
  ];
  if (measured > s.high) values.push(lifeNow(measured, s, working));
  if (i.axial !== undefined) values.push(...moveValues(measured, i.axial, i, d, s, working));
  return values;
}

function measuredTension(i: BeltInputs, d: Drive, working: WorkingStep[]): number | Problem {
  if (i.reading === 'force') {
    const [force, h] = [i.force ?? 0, i.deflection ?? d.deflection];
    if (h > d.span / 8) return { field: 'deflection', code: 'pushed-too-far', data: { most: d.span / 8 } };
    const tension = tensionFromDeflection(force / d.together, h, d.span, d.extra);
    if (tension <= 0) return { field: 'force', code: 'push-below-stiffness' };
    working.push(step(f.fromPush, { F_p: force, k: d.together, h, S: d.span, Y: d.extra }, tension));
    return tension;
  }
  if (i.reading === 'frequency') {
    const tension = tensionFromFrequency(i.frequency ?? 0, d.mass, d.span, i.bending);
    if (tension <= 0) return { field: 'bending', code: 'stiffer-than-note' };
    working.push(step(f.fromPluck, { m: d.mass, S: d.span, f: i.frequency ?? 0, EI: i.bending }, tension));
    return tension;
  }
  if (i.axial === undefined) return { field: 'axial', code: 'stretch-needs-stiffness' };
  const tension = tensionFromStretch(i.growth ?? 0, i.apart, i.axial);
  working.push(step(f.fromMarks, { EA: i.axial, x: i.growth ?? 0, l: i.apart }, tension));
  return tension;
}

/** The pull of the work stays what it is, so the peak rises by less than the setting does. */
function lifeNow(measured: number, s: Setting, working: WorkingStep[]): Value {
  const peak = s.strands.tightInBelt + (measured - s.aim);
  const share = lifeShare(peak, s.strands.tightInBelt);
  working.push(step(f.life, { T_set: s.strands.tightInBelt, T_peak: peak }, share));
  return {
    kind: 'quantity',
    key: 'lifeNow',
    label: 'Belt life left at this tension',
    value: share,
    units: ['%', '%'],
    decimals: [0, 0],
  };
}

function moveValues(
  measured: number,
  axial: number,
  i: BeltInputs,
  d: Drive,
  s: Setting,
  working: WorkingStep[],
): Value[] {
  const travel = centreMove((d.length * (s.aim - measured)) / axial, d.wrap);
  working.push(step(f.move, { L: d.length, T_0: s.aim, T_m: measured, EA: axial, theta: d.wrap }, travel));
  const signed = travel / i.thread;
  working.push(step(f.turns, { x_t: travel, p: i.thread }, signed));
  return [
    {
      kind: 'quantity',
      key: 'move',
      label: 'Move the shafts apart by (together if below 0)',
      value: travel,
      units: ['mm', 'in'],
      decimals: [2, 3],
    },
    { kind: 'number', key: 'moveTurns', label: 'Turns of the tensioner screw', value: signed, decimals: 1 },
  ];
}
