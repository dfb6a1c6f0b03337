/** Reading back: from what was measured to the tension, a verdict and what to do. */
import { step } from '../../contract/formula.ts';
import type { Problem, Value } from '../../contract/result.ts';
import type { Worked } from '../../contract/worked.ts';
import { isOver, isUnder } from '../../thresholds/index.ts';
import { centreMove, tensionFromDeflection, tensionFromFrequency, tensionFromStretch } from './checks.ts';
import type { BeltInputs, Drive } from './drive.ts';
import * as f from './formulas.ts';
import { lifeShare } from './life.ts';
import { firstFit, type Setting } from './setting.ts';

/** Over the window by up to this factor a belt is called tight, above it too tight. It is the first-fit factor; our choice. */
export const tightLimit = firstFit;
/** Pushed further than this share of the span a belt is stretched by the push itself. Our choice. */
export const deepestPush = 1 / 8;

/**
 * What a reading says of the belt: its tension, a verdict against the window, and how far to move the shafts.
 * @returns values with their working, or the problem that spoils the reading
 */
export function readingValues(i: BeltInputs, d: Drive, s: Setting): Worked<Value[]> | Problem {
  if (i.reading === 'none') return { value: [], steps: [] };
  const read = measuredTension(i, d);
  if ('code' in read) return read;
  const measured = read.value;
  const code = isUnder(measured, s.low)
    ? 'belt-slack'
    : !isOver(measured, s.high)
      ? 'belt-right'
      : isOver(measured, s.high * tightLimit)
        ? 'belt-too-tight'
        : 'belt-tight';
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
  const life = isOver(measured, s.high) ? lifeNow(measured, s) : none;
  const move = i.axial === undefined ? none : moveValues(measured, i.axial, i, d, s);
  return {
    value: [...values, ...life.value, ...move.value],
    steps: [...read.steps, ...life.steps, ...move.steps],
  };
}

const none: Worked<Value[]> = { value: [], steps: [] };

function measuredTension(i: BeltInputs, d: Drive): Worked<number> | Problem {
  if (i.reading === 'force') {
    const [force, h] = [i.force ?? 0, i.deflection ?? d.deflection];
    const most = d.span * deepestPush;
    if (isOver(h, most)) return { field: 'deflection', code: 'pushed-too-far', data: { most } };
    const value = tensionFromDeflection(force / d.together, h, d.span, d.extra);
    if (value <= 0) return { field: 'force', code: 'push-below-stiffness' };
    return { value, steps: [step(f.fromPush, { F_p: force, k: d.together, h, S: d.span, Y: d.extra }, value)] };
  }
  if (i.reading === 'frequency') {
    const note = i.frequency ?? 0;
    const value = tensionFromFrequency(note, d.mass, d.span, i.bending);
    if (value <= 0) return { field: 'bending', code: 'stiffer-than-note' };
    return { value, steps: [step(f.fromPluck, { m: d.mass, S: d.span, f: note, EI: i.bending }, value)] };
  }
  if (i.axial === undefined) return { field: 'axial', code: 'stretch-needs-stiffness' };
  const [x, l] = [i.growth ?? 0, i.apart ?? 0];
  const value = tensionFromStretch(x, l, i.axial);
  return { value, steps: [step(f.fromMarks, { EA: i.axial, x, l }, value)] };
}

/** The pull of the work stays what it is, so the peak rises by less than the setting does. */
function lifeNow(measured: number, s: Setting): Worked<Value[]> {
  const peak = s.strands.tightInBelt + (measured - s.aim);
  const share = lifeShare(peak, s.strands.tightInBelt);
  return {
    value: [
      {
        kind: 'quantity',
        key: 'lifeNow',
        label: 'Belt life left at this tension',
        value: share,
        units: ['%', '%'],
        decimals: [0, 0],
      },
    ],
    steps: [step(f.life, { T_set: s.strands.tightInBelt, T_peak: peak }, share)],
  };
}

function moveValues(measured: number, axial: number, i: BeltInputs, d: Drive, s: Setting): Worked<Value[]> {
  const travel = centreMove((d.length * (s.aim - measured)) / axial, d.wrap);
  const signed = travel / i.thread;
  return {
    value: [
      {
        kind: 'quantity',
        key: 'move',
        label: 'Move the shafts apart by (together if below 0)',
        value: travel,
        units: ['mm', 'in'],
        decimals: [2, 3],
      },
      { kind: 'number', key: 'moveTurns', label: 'Turns of the tensioner screw', value: signed, decimals: 1 },
    ],
    steps: [
      step(f.move, { L: d.length, T_0: s.aim, T_m: measured, EA: axial, theta: d.wrap }, travel),
      step(f.turns, { x_t: travel, p: i.thread }, signed),
    ],
  };
}
