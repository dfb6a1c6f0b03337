import type { InputsOf } from '../../contract/field.ts';
import { step, type WorkingStep } from '../../contract/formula.ts';
import { refuse, type Result, type Value } from '../../contract/result.ts';
import { guarded } from '../../contract/guarded.ts';
import {
  frictionTorque,
  hoopAtBore,
  ringInertia,
  ringMass,
  ringStress,
  spinEnergy,
  stopTime,
  turnsToStop,
} from './disc.ts';
import { fields } from './fields.ts';
import * as f from './formulas.ts';

type Inputs = InputsOf<typeof fields>;

const standardGravity = 9.80665;
const fine = ['mm', 'thou'] as const;

export const compute = guarded(fields, (i): Result => {
  if (i.bore >= i.diameter) return refuse('bore', 'bore-too-large', { max: i.diameter });
  const working: WorkingStep[] = [];
  const mass = ringMass(i.diameter, i.bore, i.thickness, i.density);
  working.push(step(f.mass, { rho: i.density, D: i.diameter, d: i.bore, b: i.thickness }, mass));
  const inertia = ringInertia(mass, i.diameter, i.bore);
  working.push(step(f.inertia, { m: mass, D: i.diameter, d: i.bore }, inertia));
  const energy = spinEnergy(inertia, i.rotation);
  working.push(step(f.energy, { I: inertia, n: i.rotation }, energy));
  const weight = i.sawMass * standardGravity;
  working.push(step(f.drop, { E: energy, W: weight }, energy / weight));
  const values: Value[] = [
    {
      kind: 'quantity',
      key: 'energy',
      label: 'Energy in the turning blade',
      value: energy,
      units: ['J', 'ft·lbf'],
      main: true,
    },
    {
      kind: 'quantity',
      key: 'drop',
      label: 'As much as the saw falling from',
      value: energy / weight,
      units: ['m', 'ft'],
      decimals: [0, 0],
    },
    ...stopValues(i, inertia, working),
    ...wobbleValues(i, working),
    {
      kind: 'quantity',
      key: 'mass',
      label: 'Mass of the disc, without segments',
      value: mass,
      units: ['kg', 'lb'],
      decimals: [2, 2],
    },
    { kind: 'quantity', key: 'inertia', label: 'Inertia', value: inertia, units: ['kg·m2', 'kg·m2'], decimals: [4, 4] },
    ...stressValues(i, working),
  ];
  return {
    ok: true,
    values,
    working,
    cautions: [
      { hazard: 'stored-energy-run-down', level: 'danger' },
      { hazard: 'damaged-blade', level: 'danger' },
    ],
  };
});

function stopValues(i: Inputs, inertia: number, working: WorkingStep[]): Value[] {
  const measured = i.known === 'time';
  const time = measured ? (i.time ?? 1) : stopTime(inertia, i.rotation, i.torque ?? 1);
  const torque = measured ? frictionTorque(inertia, i.rotation, time) : (i.torque ?? 1);
  working.push(
    measured
      ? step(f.friction, { I: inertia, n: i.rotation, t: time }, torque)
      : step(f.stop, { I: inertia, n: i.rotation, M: torque }, time),
  );
  const turns = turnsToStop(i.rotation, time);
  working.push(step(f.turns, { n: i.rotation, t: time }, turns));
  return [
    {
      kind: 'verdict',
      key: 'verdict',
      label: 'Run-down',
      code: 'wait-for-it',
      level: 'note',
      main: true,
      data: { time, turns },
    },
    {
      kind: 'quantity',
      key: 'time',
      label: 'Time to standstill',
      value: time,
      units: ['s', 's'],
      decimals: [1, 1],
      main: true,
    },
    { kind: 'number', key: 'turns', label: 'Turns until it stands', value: turns, decimals: 0 },
    {
      kind: 'quantity',
      key: 'torque',
      label: 'Friction torque that stops it',
      value: torque,
      units: ['N·m', 'lbf·ft'],
      decimals: [2, 2],
      note: 'Write it down: if it grows between services, a bearing, the belt or the drum drags.',
    },
  ];
}

function wobbleValues(i: Inputs, working: WorkingStep[]): Value[] {
  const fromDirt = (i.speck * i.diameter) / i.flange;
  working.push(step(f.speck, { s: i.speck, D: i.diameter, F: i.flange }, fromDirt));
  const allowed = i.runOutLimit ?? i.diameter / 1000;
  if (i.runOutLimit === undefined) working.push(step(f.limit, { D: i.diameter }, allowed));
  const values: Value[] = [
    {
      kind: 'quantity',
      key: 'runOutLimit',
      label: 'Run-out allowed at the rim',
      value: allowed,
      units: fine,
      decimals: [2, 0],
      ...(i.runOutLimit === undefined ? { source: 'blade-run-out-limit' } : {}),
    },
    {
      kind: 'quantity',
      key: 'dirtRunOut',
      label: 'Run-out from that dirt under the flange',
      value: fromDirt,
      units: fine,
      decimals: [2, 0],
    },
  ];
  if (i.runOut === undefined) return values;
  const over = i.runOut > allowed;
  return [
    {
      kind: 'verdict',
      key: 'runOutVerdict',
      label: 'Wobble',
      code: over ? 'wobbles' : 'runs-true',
      level: over ? 'caution' : 'good',
      main: true,
    },
    ...values,
  ];
}

function stressValues(i: Inputs, working: WorkingStep[]): Value[] {
  const bore = hoopAtBore(i.diameter, i.bore, i.rotation, i.density, i.poisson);
  working.push(step(f.hoop, { nu: i.poisson, rho: i.density, n: i.rotation, D: i.diameter, d: i.bore }, bore));
  const ring = ringStress(i.density, Math.PI * i.diameter * i.rotation);
  working.push(step(f.ring, { rho: i.density, D: i.diameter, n: i.rotation }, ring));
  return [
    {
      kind: 'quantity',
      key: 'boreStress',
      label: 'Stress at the bore from spinning, whole disc',
      value: bore,
      units: ['MPa', 'ksi'],
      decimals: [1, 1],
      note: 'A plain disc. Slots, cracks and segments are not in it: at the root of a slot it is higher.',
    },
    {
      kind: 'quantity',
      key: 'ringStress',
      label: 'Stress in a thin ring at that rim speed',
      value: ring,
      units: ['MPa', 'ksi'],
      decimals: [1, 1],
    },
  ];
}
