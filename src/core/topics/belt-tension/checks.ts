/** Three ways to feel the tension of a belt that stands still, forwards and back, and what each must show. */
import { step } from '../../contract/formula.ts';
import type { Value } from '../../contract/result.ts';
import type { Worked } from '../../contract/worked.ts';
import type { BeltInputs, Drive } from './drive.ts';
import * as f from './formulas.ts';
import type { Setting } from './setting.ts';

/**
 * Force that pushes the middle of a span down by a given amount (taut string).
 * Formula: P = 2 (T + Y) sin(atan(2 h / S)).
 * @param tension T [N] @param deflection h [m], >= 0 @param span S [m], > 0
 * @param extra Y, allowance for the belt's own stiffness [N]
 * @returns P [N]
 * Example: 400 N at 1/64 of the span -> 24.988 N; the book's T / 16 gives 25.0. Source: bloch-geitner-v4, p. 326.
 */
export function deflectionForce(tension: number, deflection: number, span: number, extra: number): number {
  return 2 * (tension + extra) * Math.sin(Math.atan((2 * deflection) / span));
}

/**
 * The same read backwards: T = P / (2 sin(atan(2 h / S))) - Y.
 * @param force P [N] @param deflection h [m], > 0 @param span S [m], > 0 @param extra Y [N]
 * @returns T [N]; below zero where the belt's own stiffness takes more than the force
 * Example: 24.988 N at 1/64 of the span, no Y -> 400 N. Source: bloch-geitner-v4, p. 326.
 */
export function tensionFromDeflection(force: number, deflection: number, span: number, extra: number): number {
  return force / (2 * Math.sin(Math.atan((2 * deflection) / span))) - extra;
}

/**
 * Note of a plucked span, pinned ends, bending stiffness allowed for.
 * Formula: f = 1 / (2 S) sqrt((T + pi^2 EI / S^2) / m).
 * @param tension T [N] @param mass m [kg/m], > 0 @param span S [m], > 0
 * @param bending EI [N m^2], >= 0; 0 for a limp belt. T, m and EI all for one rib, or all for the whole belt.
 * @returns f [Hz]
 * Example: 16 N, 0.04 kg/m, 0.4 m -> 25.00 Hz (verma-physics, Example 15.7). Stiff form: blevins-modes, eq. 8.20.
 */
export function spanFrequency(tension: number, mass: number, span: number, bending: number): number {
  return Math.sqrt((tension + (Math.PI ** 2 * bending) / span ** 2) / mass) / (2 * span);
}

/**
 * Tension from the note: T = 4 m S^2 f^2 - pi^2 EI / S^2.
 * @param frequency f [Hz] @param mass m [kg/m] @param span S [m] @param bending EI [N m^2]
 * @returns T [N]; below zero when the stiffness alone would sound higher than that
 * Example: 25 Hz, 0.04 kg/m, 0.4 m -> 16 N. Source: verma-physics, Example 15.7; blevins-modes, eq. 8.20.
 */
export function tensionFromFrequency(frequency: number, mass: number, span: number, bending: number): number {
  return 4 * mass * span ** 2 * frequency ** 2 - (Math.PI ** 2 * bending) / span ** 2;
}

/**
 * How far two marks on a slack belt move apart when it is tightened (Hooke).
 * Formula: x = l T / EA.
 * @param tension T of one strand [N] @param apart l, between the marks on the slack belt [m]
 * @param axial EA, force that would double the belt's length [N], > 0
 * @returns x [m]
 * Example: 100 N, 200 mm, 10 kN -> 2 mm. Source: Hooke's law.
 */
export function stretch(tension: number, apart: number, axial: number): number {
  return (apart * tension) / axial;
}

/**
 * Tension from the stretch of two marks: T = EA x / l.
 * @param growth x [m] @param apart l [m], > 0 @param axial EA [N] @returns T [N]
 * Example: 2 mm on 200 mm, 10 kN -> 100 N. Source: Hooke's law.
 */
export function tensionFromStretch(growth: number, apart: number, axial: number): number {
  return (axial * growth) / apart;
}

/**
 * Belt stiffness from a pull on the bench: hang a weight on the cut or looped belt and measure.
 * Formula: EA = F l / x.
 * @param force F [N] @param apart l [m] @param growth x [m], > 0 @returns EA [N]
 * Example: 100 N, 200 mm, 2 mm -> 10 kN. Source: Hooke's law.
 */
export function axialStiffness(force: number, apart: number, growth: number): number {
  return (force * apart) / growth;
}

/**
 * Center movement that changes the belt path by a given length.
 * Formula: dC = dL / (2 sin(theta / 2)); theta the wrap of the small pulley.
 * @param lengthChange dL [m] @param wrap theta [rad], > 0 @returns dC [m]
 * Example: 2 mm at 180 degrees -> 1 mm. Source: geometry.
 */
export function centreMove(lengthChange: number, wrap: number): number {
  return lengthChange / (2 * Math.sin(wrap / 2));
}

/** The three checks to make on the belt at rest, each as a window: push, pluck, stretch. */
export function checkValues(i: BeltInputs, d: Drive, s: Setting): Worked<Value[]> {
  const push = (t: number) => d.together * deflectionForce(t, d.deflection, d.span, d.extra);
  const pluck = (t: number, mass: number) => spanFrequency(t, mass, d.span, i.bending);
  const steps = [
    step(f.pushForce, { k: d.together, T_0: s.low, Y: d.extra, h: d.deflection, S: d.span }, push(s.low)),
    step(f.pluck, { T_0: s.low, EI: i.bending, S: d.span, m: d.mass }, pluck(s.low, d.mass)),
  ];
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
  const { axial, apart } = i;
  if (axial === undefined) return { value: values, steps };
  const grow = (t: number) => stretch(t, apart ?? 0, axial);
  const marks: Value = {
    kind: 'quantity',
    key: 'stretch',
    label: 'Marks move apart by',
    value: grow(s.aim),
    low: grow(s.low),
    high: grow(s.high),
    units: ['mm', 'in'],
    decimals: [2, 3],
  };
  return {
    value: [...values, marks],
    steps: [...steps, step(f.marks, { l: apart ?? 0, T_0: s.low, EA: axial }, grow(s.low))],
  };
}
