/** The three checks to make on the belt at rest: push, pluck, stretch. */
import { step, type WorkingStep } from '../../contract/formula.ts';
import type { Value } from '../../contract/result.ts';
import { deflectionForce, spanFrequency, stretch } from './checks.ts';
import type { BeltInputs, Drive } from './drive.ts';
import * as f from './formulas.ts';
import type { Setting } from './setting.ts';

/** What to push, sound or measure to check a belt set to the window: values, working pushed in their order. */
export function checkValues(i: BeltInputs, d: Drive, s: Setting, working: WorkingStep[]): Value[] {
  const push = (t: number) => d.together * deflectionForce(t, d.deflection, d.span, d.extra);
  working.push(step(f.pushForce, { k: d.together, T_0: s.low, Y: d.extra, h: d.deflection, S: d.span }, push(s.low)));
  const pluck = (t: number, mass: number) => spanFrequency(t, mass, d.span, i.bending);
  working.push(step(f.pluck, { T_0: s.low, EI: i.bending, S: d.span, m: d.mass }, pluck(s.low, d.mass)));
  const values: Value[] = [
    {
      kind: 'quantity',
      key: 'deflection',
      label: 'Push the middle of the span down by',
      value: d.deflection,
      units: ['mm', 'in'],
      decimals: [1, 2],
      main: true,
    },
    {
      kind: 'quantity',
      key: 'pushForce',
      label: d.together > 1 ? 'Force for that, across the whole belt' : 'Force for that, on one belt',
      value: push(s.aim),
      low: push(s.low),
      high: push(s.high),
      units: ['N', 'lbf'],
      decimals: [1, 1],
      main: true,
    },
    {
      kind: 'quantity',
      key: 'pluck',
      label: 'Note of the plucked span',
      value: pluck(s.aim, d.mass),
      low: pluck(s.low, d.mass),
      high: pluck(s.high, d.mass),
      units: ['Hz', 'Hz'],
      decimals: [0, 0],
      main: true,
      ...(d.massSource ? { source: d.massSource } : {}),
    },
    // A heavier belt sounds lower at the same tension: this is what not knowing the mass costs.
    {
      kind: 'quantity',
      key: 'pluckSpread',
      label: 'That note if the belt’s mass is not as assumed',
      value: pluck(s.aim, d.mass),
      low: pluck(s.aim, d.massHigh),
      high: pluck(s.aim, d.massLow),
      units: ['Hz', 'Hz'],
      decimals: [0, 0],
    },
    {
      kind: 'quantity',
      key: 'mass',
      label: 'Mass of one belt or rib, per meter',
      value: d.mass,
      low: d.massLow,
      high: d.massHigh,
      units: ['g/m', 'lb/ft'],
      decimals: [0, 4],
      ...(d.massSource ? { source: d.massSource } : {}),
    },
  ];
  if (i.axial === undefined) return values;
  const grow = (t: number) => stretch(t, i.apart, i.axial as number);
  working.push(step(f.marks, { l: i.apart, T_0: s.low, EA: i.axial }, grow(s.low)));
  return [
    ...values,
    {
      kind: 'quantity',
      key: 'stretch',
      label: 'Marks move apart by',
      value: grow(s.aim),
      low: grow(s.low),
      high: grow(s.high),
      units: ['mm', 'in'],
      decimals: [2, 3],
    },
  ];
}
