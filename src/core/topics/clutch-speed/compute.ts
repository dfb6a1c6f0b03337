import type { InputsOf } from '../../contract/field.ts';
import { step, type WorkingStep } from '../../contract/formula.ts';
import { refuse, type Caution, type Result, type Value } from '../../contract/result.ts';
import { guarded } from '../../contract/guarded.ts';
import { fields } from './fields.ts';
import * as f from './formulas.ts';
import { engagement, gripSpeed, heldTorque, shoeAtDrum, type Shoe } from './shoes.ts';

type Inputs = InputsOf<typeof fields>;

/** Least engagement speed for each unit of idle speed. Source: clutch-idle-margin (memory). */
export const idleMarginWanted = 1.25;

export const compute = guarded(fields, (i): Result => {
  if (i.idle >= i.running) return refuse('idle', 'idle-over-running');
  if (i.radius + i.gap >= i.drum / 2) return refuse('radius', 'shoe-outside-drum');
  const working: WorkingStep[] = [];
  const shoe = solveShoe(i, working);
  const engages = engagement(shoe);
  working.push(step(f.engages, { F: shoe.spring, m: shoe.mass, r: shoe.radius }, engages));
  const values = speeds(i, shoe, engages, working);
  const danger = values.some((v) => v.kind === 'verdict' && v.level === 'stop');
  const cautions: Caution[] = [{ hazard: 'unexpected-start', level: 'danger' }];
  return {
    ok: true,
    values,
    working,
    cautions: danger ? [{ hazard: 'blade-turns-at-idle', level: 'danger' }, ...cautions] : cautions,
  };
});

function solveShoe(i: Inputs, working: WorkingStep[]): Shoe {
  if (i.known === 'parts') {
    const shoe = shoeAtDrum(i.mass, i.radius, i.spring ?? 0, i.rate ?? 0, i.gap);
    working.push(step(f.springForce, { F_0: i.spring ?? 0, k: i.rate ?? 0, c: i.gap }, shoe.spring));
    return shoe;
  }
  const radius = i.radius + i.gap;
  const spring = i.mass * radius * (2 * Math.PI * (i.engages ?? 0)) ** 2;
  working.push(step(f.springFromSpeed, { m: i.mass, r: radius, n_1: i.engages ?? 0 }, spring));
  return { mass: i.mass, radius, spring };
}

function speeds(i: Inputs, shoe: Shoe, engages: number, working: WorkingStep[]): Value[] {
  const drum = i.drum / 2;
  const weak = engages * Math.sqrt(i.weak);
  working.push(step(f.weakSpring, { n_1: engages, F_w: shoe.spring * i.weak, F: shoe.spring }, weak));
  const margin = engages / i.idle;
  working.push(step(f.idleMargin, { n_1: engages, n_i: i.idle }, margin));
  const needs = i.power / (2 * Math.PI * i.running);
  working.push(step(f.needed, { P: i.power, n: i.running }, needs));
  const grip = gripSpeed(shoe, i.shoes, i.friction, drum, needs);
  working.push(
    step(
      f.grips,
      { F: shoe.spring, T_n: needs, z: i.shoes, mu: i.friction, R: drum, m: shoe.mass, r: shoe.radius },
      grip,
    ),
  );
  const held = heldTorque(shoe, i.shoes, i.friction, drum, i.running);
  if (i.running >= engages)
    working.push(
      step(
        f.held,
        { z: i.shoes, mu: i.friction, R: drum, m: shoe.mass, r: shoe.radius, n: i.running, F: shoe.spring },
        held,
      ),
    );

  const rpm = ['rpm', 'rpm'] as const;
  const torque = ['N·m', 'lbf·ft'] as const;
  return [
    ...verdicts(i, engages, weak, held, needs),
    { kind: 'quantity', key: 'engagement', label: 'The clutch engages at', value: engages, units: rpm, main: true },
    {
      kind: 'number',
      key: 'margin',
      label: 'Engagement speed for each unit of idle speed',
      value: margin,
      decimals: 2,
      main: true,
      source: 'clutch-idle-margin',
    },
    { kind: 'quantity', key: 'weakEngagement', label: 'It engages at, with one weak spring', value: weak, units: rpm },
    {
      kind: 'quantity',
      key: 'highestIdle',
      label: 'Highest idle speed that keeps the distance',
      value: engages / idleMarginWanted,
      units: rpm,
      source: 'clutch-idle-margin',
    },
    { kind: 'quantity', key: 'grip', label: 'It holds full torque from', value: grip, units: rpm },
    {
      kind: 'quantity',
      key: 'held',
      label: 'Torque it holds at running speed',
      value: held,
      units: torque,
      decimals: [1, 1],
    },
    { kind: 'quantity', key: 'needed', label: 'Torque to carry', value: needs, units: torque, decimals: [1, 1] },
    {
      kind: 'table',
      key: 'ladder',
      label: 'Speeds, from slow to fast',
      columns: [
        { key: 'what', label: 'Speed' },
        { key: 'rotation', label: 'At', units: rpm, decimals: [0, 0] },
      ],
      rows: (
        [
          ['Idle', i.idle],
          ['Engages, one weak spring', weak],
          ['Engages', engages],
          ['Holds full torque', grip],
          ['Running', i.running],
        ] as [string, number][]
      ).sort((a, b) => a[1] - b[1]),
    },
  ];
}

function verdicts(i: Inputs, engages: number, weak: number, held: number, needs: number): Value[] {
  const values: Value[] = [];
  const seen = { cord: 'drags-on-cord', idle: 'turns-at-idle-seen', lingers: 'lingers-after-cut' } as const;
  if (i.observed !== 'stands')
    values.push({
      kind: 'verdict',
      key: 'observedVerdict',
      label: 'What you saw',
      code: seen[i.observed],
      level: 'stop',
      main: true,
    });
  const code =
    i.idle >= engages
      ? 'idle-over-engagement'
      : engages < idleMarginWanted * i.idle * (1 - 1e-12)
        ? 'idle-too-near'
        : 'idle-clear';
  values.push({
    kind: 'verdict',
    key: 'verdict',
    label: 'Idle against engagement',
    code,
    level: code === 'idle-clear' ? 'good' : 'stop',
    main: true,
    data: { highest: engages / idleMarginWanted },
  });
  if (i.weak < 1)
    values.push({
      kind: 'verdict',
      key: 'weakVerdict',
      label: 'One weak spring',
      code: weak <= i.idle ? 'weak-turns-at-idle' : 'weak-holds-off',
      level: weak <= i.idle ? 'caution' : 'note',
    });
  const slips = held < needs;
  values.push({
    kind: 'verdict',
    key: 'gripVerdict',
    label: 'Grip at running speed',
    code: slips ? 'clutch-slips' : 'clutch-holds',
    level: slips ? 'caution' : 'good',
  });
  return values;
}
