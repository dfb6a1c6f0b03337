import type { InputsOf } from '../../contract/field.ts';
import { step } from '../../contract/formula.ts';
import { refuse, type Problem, type Result, type Value } from '../../contract/result.ts';
import { guarded } from '../../contract/guarded.ts';
import type { Worked } from '../../contract/worked.ts';
import { isOver, isUnder } from '../../thresholds/index.ts';
import { fields } from './fields.ts';
import * as f from './formulas.ts';
import { engagement, gripSpeed, heldTorque, shoeAtDrum } from './shoes.ts';

type Inputs = InputsOf<typeof fields>;
type Ladder = [string, number][];

/** Least engagement speed for each unit of idle speed. Source: clutch-idle-margin (memory). */
export const idleMarginWanted = 1.25;

const rpm = ['rpm', 'rpm'] as const;
const torque = ['N·m', 'lbf·ft'] as const;

export const compute = guarded(fields, (i): Result => {
  const problem = i.known === 'parts' ? partsProblem(i) : undefined;
  if (problem) return refuse(problem.field, problem.code);
  const parts = i.known === 'parts' ? fromParts(i) : undefined;
  const engages = parts?.value.engages ?? i.engages ?? 0;
  const weak = engages * Math.sqrt(i.weak);
  const margin = engages / i.idle;
  const values: Value[] = [
    ...seen(i),
    ...judged(i, engages, weak),
    ...(parts?.value.verdict ?? []),
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
    ...(parts?.value.shown ?? []),
    ladder([
      ['Idle', i.idle],
      ['Engages, one weak spring', weak],
      ['Engages', engages],
      ...(parts?.value.ladder ?? []),
    ]),
  ];
  const stops = values.some((v) => v.kind === 'verdict' && v.level === 'stop');
  return {
    ok: true,
    values,
    working: [
      ...(parts?.steps.slice(0, 2) ?? []),
      step(f.weakSpring, { n_1: engages, w: i.weak }, weak),
      step(f.idleMargin, { n_1: engages, n_i: i.idle }, margin),
      ...(parts?.steps.slice(2) ?? []),
    ],
    cautions: [
      ...(stops ? [{ hazard: 'blade-turns-at-idle', level: 'danger' } as const] : []),
      { hazard: 'unexpected-start', level: 'danger' },
    ],
  };
});

function partsProblem(i: Inputs): Problem | undefined {
  if (i.idle >= (i.running ?? 0)) return { field: 'idle', code: 'idle-over-running' };
  if ((i.radius ?? 0) + (i.gap ?? 0) >= (i.drum ?? 0) / 2) return { field: 'radius', code: 'shoe-outside-drum' };
  return undefined;
}

interface FromParts {
  readonly engages: number;
  readonly verdict: readonly Value[];
  readonly shown: readonly Value[];
  readonly ladder: Ladder;
}

/** Engagement from shoes and springs, and what the clutch then holds. The first two steps lead to the engagement. */
function fromParts(i: Inputs): Worked<FromParts> {
  const [rest, gap, running] = [i.spring ?? 0, i.gap ?? 0, i.running ?? 0];
  const [shoes, friction, drum] = [i.shoes ?? 0, i.friction ?? 0, (i.drum ?? 0) / 2];
  // Where nobody measured the rate, the force is taken not to grow: engagement is then never put too high.
  const rate = i.rate ?? 0;
  const shoe = shoeAtDrum(i.mass ?? 0, i.radius ?? 0, rest, rate, gap);
  const engages = engagement(shoe);
  const needs = (i.power ?? 0) / (2 * Math.PI * running);
  const grip = gripSpeed(shoe, shoes, friction, drum, needs);
  const held = heldTorque(shoe, shoes, friction, drum, running);
  const slips = isUnder(held, needs);
  const clutch = { z: shoes, mu: friction, R: drum, m: shoe.mass, r: shoe.radius, F: shoe.spring };
  return {
    value: {
      engages,
      verdict: [
        {
          kind: 'verdict',
          key: 'gripVerdict',
          label: 'Grip at running speed',
          code: slips ? 'clutch-slips' : 'clutch-holds',
          level: slips ? 'caution' : 'good',
        },
      ],
      shown: [
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
      ],
      ladder: [
        ['Holds full torque', grip],
        ['Running', running],
      ],
    },
    steps: [
      step(f.springForce, { F_0: rest, k: rate, c: gap }, shoe.spring),
      step(f.engages, { F: shoe.spring, m: shoe.mass, r: shoe.radius }, engages),
      step(f.needed, { P: i.power ?? 0, n: running }, needs),
      step(f.grips, { ...clutch, T_n: needs }, grip),
      ...(running >= engages ? [step(f.held, { ...clutch, n: running }, held)] : []),
    ],
  };
}

/** What was seen outweighs every figure, so it stands first. */
function seen(i: Inputs): Value[] {
  if (i.observed === 'stands') return [];
  const code = { cord: 'drags-on-cord', idle: 'turns-at-idle-seen', lingers: 'lingers-after-cut' }[i.observed];
  return [{ kind: 'verdict', key: 'observedVerdict', label: 'What you saw', code, level: 'stop', main: true }];
}

function judged(i: Inputs, engages: number, weak: number): Value[] {
  const code = !isUnder(i.idle, engages)
    ? 'idle-over-engagement'
    : isUnder(engages, idleMarginWanted * i.idle)
      ? 'idle-too-near'
      : 'idle-clear';
  const turns = !isOver(weak, i.idle);
  return [
    {
      kind: 'verdict',
      key: 'verdict',
      label: 'Idle against engagement',
      code,
      // No good word beside a blade that was seen to turn.
      level: code !== 'idle-clear' ? 'stop' : i.observed === 'stands' ? 'good' : 'note',
      main: true,
      data: { highest: engages / idleMarginWanted, observed: i.observed },
    },
    ...(isUnder(i.weak, 1)
      ? [
          {
            kind: 'verdict',
            key: 'weakVerdict',
            label: 'One weak spring',
            code: turns ? 'weak-turns-at-idle' : 'weak-holds-off',
            level: turns ? 'caution' : 'note',
          } as const,
        ]
      : []),
  ];
}

function ladder(rows: Ladder): Value {
  return {
    kind: 'table',
    key: 'ladder',
    label: 'Speeds, from slow to fast',
    columns: [
      { key: 'what', label: 'Speed' },
      { key: 'rotation', label: 'At', units: rpm, decimals: [0, 0] },
    ],
    rows: rows.sort((a, b) => a[1] - b[1]),
  };
}
