import type { InputsOf } from '../../contract/field.ts';
import { step } from '../../contract/formula.ts';
import { refuse, type Result, type Value } from '../../contract/result.ts';
import { guarded } from '../../contract/guarded.ts';
import type { Worked } from '../../contract/worked.ts';
import { isOver } from '../../thresholds/index.ts';
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

/** Standard gravity [m/s2], by definition. Source: nist-sp-811. */
const standardGravity = 9.80665;
/** Highest speed at the rim that blades of hand-held and floor saws are marked for [m/s]. Source: blade-marks-unread (memory). */
export const highestUsualMark = 100;
/** No cutting blade is marked for more than 125 m/s; from here on a figure was mistyped [m/s]. Source: blade-marks-unread (memory). */
export const rimRefused = 150;
/** Run-out allowed as a share of the diameter where the manual gives none. Source: blade-run-out-limit. */
const runOutShare = 1 / 1000;
const fine = ['mm', 'thou'] as const;

export const compute = guarded(fields, (i): Result => {
  if (i.bore >= i.diameter) return refuse('bore', 'bore-too-large', { max: i.diameter });
  if (i.flange >= i.diameter) return refuse('flange', 'flange-over-blade', { got: i.flange, max: i.diameter });
  if (i.flange <= i.bore) return refuse('flange', 'flange-under-bore', { got: i.flange, min: i.bore });
  const rim = Math.PI * i.diameter * i.rotation;
  if (isOver(rim, rimRefused)) return refuse('rotation', 'rim-too-fast', { rim, most: rimRefused });
  const disc = discValues(i);
  const stop = stopValues(i, disc.value.inertia);
  const wobble = wobbleValues(i);
  const stress = stressValues(i);
  return {
    ok: true,
    values: [
      ...rimValues(rim),
      ...disc.value.energy,
      ...stop.value,
      ...wobble.value,
      ...disc.value.body,
      ...stress.value,
    ],
    working: [...disc.steps, ...stop.steps, ...wobble.steps, ...stress.steps],
    cautions: [
      ...(isOver(rim, highestUsualMark) ? [{ hazard: 'blade-overspeed', level: 'danger' } as const] : []),
      { hazard: 'stored-energy-run-down', level: 'danger' },
      { hazard: 'damaged-blade', level: 'danger' },
    ],
  };
});

/** A rim faster than blades are marked for is said first. */
function rimValues(rim: number): Value[] {
  if (!isOver(rim, highestUsualMark)) return [];
  return [
    {
      kind: 'verdict',
      key: 'rimVerdict',
      label: 'Speed at the rim',
      code: 'rim-fast',
      level: 'stop',
      main: true,
      source: 'blade-marks-unread',
      data: { rim },
    },
  ];
}

interface Disc {
  readonly inertia: number;
  readonly energy: readonly Value[];
  readonly body: readonly Value[];
}

function discValues(i: Inputs): Worked<Disc> {
  const mass = ringMass(i.diameter, i.bore, i.thickness, i.density);
  const inertia = ringInertia(mass, i.diameter, i.bore);
  const energy = spinEnergy(inertia, i.rotation);
  const weight = i.sawMass * standardGravity;
  return {
    steps: [
      step(f.mass, { rho: i.density, D: i.diameter, d: i.bore, b: i.thickness }, mass),
      step(f.inertia, { m: mass, D: i.diameter, d: i.bore }, inertia),
      step(f.energy, { I: inertia, n: i.rotation }, energy),
      step(f.drop, { E: energy, W: weight }, energy / weight),
    ],
    value: {
      inertia,
      energy: [
        {
          kind: 'quantity',
          key: 'energy',
          label: 'Energy in the turning blade',
          value: energy,
          units: ['J', 'ft·lbf'],
          figures: 2,
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
      ],
      body: [
        {
          kind: 'quantity',
          key: 'mass',
          label: 'Mass of the disc, without segments',
          value: mass,
          units: ['kg', 'lb'],
          decimals: [2, 2],
        },
        {
          kind: 'quantity',
          key: 'inertia',
          label: 'Inertia',
          value: inertia,
          units: ['kg·m2', 'kg·m2'],
          decimals: [4, 4],
        },
      ],
    },
  };
}

function stopValues(i: Inputs, inertia: number): Worked<Value[]> {
  const measured = i.known === 'time';
  const time = measured ? (i.time ?? 1) : stopTime(inertia, i.rotation, i.torque ?? 1);
  const torque = measured ? frictionTorque(inertia, i.rotation, time) : (i.torque ?? 1);
  const turns = turnsToStop(i.rotation, time);
  const steps = [
    measured
      ? step(f.friction, { I: inertia, n: i.rotation, t: time }, torque)
      : step(f.stop, { I: inertia, n: i.rotation, M: torque }, time),
    step(f.turns, { n: i.rotation, t: time }, turns),
  ];
  const value: Value[] = [
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
  return { value, steps };
}

function wobbleValues(i: Inputs): Worked<Value[]> {
  const fromDirt = (i.speck * i.diameter) / i.flange;
  const allowed = i.runOutLimit ?? i.diameter * runOutShare;
  const steps = [
    step(f.speck, { s: i.speck, D: i.diameter, F: i.flange }, fromDirt),
    ...(i.runOutLimit === undefined ? [step(f.limit, { D: i.diameter }, allowed)] : []),
  ];
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
  if (i.runOut === undefined) return { value: values, steps };
  const over = isOver(i.runOut, allowed);
  const value: Value[] = [
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
  return { value, steps };
}

function stressValues(i: Inputs): Worked<Value[]> {
  const bore = hoopAtBore(i.diameter, i.bore, i.rotation, i.density, i.poisson);
  const ring = ringStress(i.density, Math.PI * i.diameter * i.rotation);
  const steps = [
    step(f.hoop, { nu: i.poisson, rho: i.density, n: i.rotation, D: i.diameter, d: i.bore }, bore),
    step(f.ring, { rho: i.density, D: i.diameter, n: i.rotation }, ring),
  ];
  const value: Value[] = [
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
  return { value, steps };
}
