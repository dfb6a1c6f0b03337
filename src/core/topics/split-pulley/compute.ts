import { pulleys } from '../belt-tension/index.ts';
import type { InputsOf } from '../../contract/field.ts';
import { step } from '../../contract/formula.ts';
import { refuse, type Caution, type Result, type Value } from '../../contract/result.ts';
import { guarded } from '../../contract/guarded.ts';
import type { Worked } from '../../contract/worked.ts';
import { isOver, isUnder } from '../../thresholds/index.ts';
import { climb, pitchRadius, runOut, tilt, turnsForLoop, type Cones } from './climb.ts';
import { fields } from './fields.ts';
import * as f from './formulas.ts';
import { stateAt, statesOf, type State } from './states.ts';

type Inputs = InputsOf<typeof fields>;

const turnOf = { eighth: 1 / 8, quarter: 1 / 4, half: 1 / 2 } as const;
const long = ['mm', 'in'] as const;
/** A belt this much narrower than made for is worn, this much wider is another belt. Our choice. */
export const widthSlack = 0.03;
/** A belt lower than this share of the closed diameter lies at the axle, where the V is no V. Our choice. */
const axleShare = 0.05;
/** Most rows of the table of states. */
const mostStates = 25;

export const compute = guarded(fields, (i): Result => {
  if (i.gapEnd >= i.gapStart) return refuse('gapEnd', 'gap-not-closing', { start: i.gapStart });
  const belt = i.beltWidthNow ?? i.beltWidth;
  const cones: Cones = { closed: i.closedDiameter / 2, angle: i.angle, nominal: i.beltWidth, belt };
  const lowest = pitchRadius(cones, i.gapStart);
  if (!isOver(lowest, i.closedDiameter * axleShare))
    return refuse('gapStart', 'belt-at-the-axle', { climb: climb(i.gapStart, i.angle) });
  const least = (Math.max(pitchRadius(cones, i.gapEnd) * 2, i.closedDiameter) + i.drivePulley) / 2;
  if (!isOver(i.centre, least)) return refuse('centre', 'pulleys-touch', { least });

  const stepGap = i.thread * turnOf[i.step];
  const states = statesOf(cones, i.drivePulley, i.centre, i.gapStart, i.gapEnd, stepGap, mostStates);
  const [open, closed] = [
    stateAt(cones, i.drivePulley, i.centre, 0, i.gapStart),
    stateAt(cones, i.drivePulley, i.centre, 0, i.gapEnd),
  ];
  const belted = i.beltLength ?? closed.path;
  const parts = [
    climbValues(i, cones, open, closed),
    passValues(i, belted, open, closed, stepGap),
    fitValues(i, belted, closed),
    widthValues(i, cones, closed),
    pinchValues(i, belt, closed, stepGap),
  ];
  const values = parts.flatMap((part) => part.value);
  // A narrow belt lies deeper and turns the blades faster than they are marked for.
  const faster = values.some((v) => v.kind === 'verdict' && v.code === 'belt-narrow');
  const cautions: Caution[] = [{ hazard: 'moving-belt', level: 'warning' }];
  return {
    ok: true,
    values: [...values, statesTable(states, belted, i.drivePulley)],
    working: parts.flatMap((part) => part.steps),
    cautions: faster ? [{ hazard: 'blade-overspeed', level: 'danger' }, ...cautions] : cautions,
  };
});

function climbValues(i: Inputs, c: Cones, open: State, closed: State): Worked<Value[]> {
  const ratioOf = (s: State) => i.drivePulley / (2 * s.radius);
  const climbs = climb(i.gapStart - i.gapEnd, i.angle);
  const stepsOf = (s: State) => {
    const { small, large } = pulleys(2 * s.radius, i.drivePulley);
    return [
      step(f.radius, { r_c: c.closed, g: s.gap, w: c.nominal, w_b: c.belt, phi: c.angle }, s.radius),
      step(f.path, { C: i.centre, D: large, d: small }, s.path),
      step(f.ratio, { d_d: i.drivePulley, r: s.radius }, ratioOf(s)),
    ];
  };
  const steps = [
    ...stepsOf(open),
    ...stepsOf(closed),
    step(f.climbed, { g_0: i.gapStart, g_1: i.gapEnd, phi: i.angle }, climbs),
  ];
  const value: Value[] = [
    {
      kind: 'quantity',
      key: 'climb',
      label: 'The belt must climb, in radius',
      value: climbs,
      units: long,
      decimals: [2, 3],
      main: true,
    },
    {
      kind: 'quantity',
      key: 'radiusOpen',
      label: 'Pitch radius at the start',
      value: open.radius,
      units: long,
      decimals: [2, 3],
    },
    {
      kind: 'quantity',
      key: 'radiusClosed',
      label: 'Pitch radius, closed',
      value: closed.radius,
      units: long,
      decimals: [2, 3],
    },
    {
      kind: 'quantity',
      key: 'pitchClosed',
      label: 'Pitch diameter, closed, with this belt',
      value: 2 * closed.radius,
      units: long,
      decimals: [2, 3],
    },
    {
      kind: 'quantity',
      key: 'pathGrowth',
      label: 'The belt path grows by',
      value: closed.path - open.path,
      units: long,
      decimals: [1, 2],
    },
    { kind: 'quantity', key: 'path', label: 'Belt path, closed', value: closed.path, units: long, decimals: [1, 2] },
    {
      kind: 'number',
      key: 'ratio',
      label: 'Blade turns for each turn of the drive pulley, closed',
      value: ratioOf(closed),
      decimals: 3,
    },
    {
      kind: 'quantity',
      key: 'ratioChange',
      label: 'Blade speed, closed against open',
      value: ratioOf(closed) / ratioOf(open) - 1,
      units: ['%', '%'],
      decimals: [1, 1],
    },
  ];
  return { value, steps };
}

function passValues(i: Inputs, belted: number, open: State, closed: State, stepGap: number): Worked<Value[]> {
  const exact = (i.gapStart - i.gapEnd) / stepGap;
  const turns = turnsForLoop(closed.path, closed.radius);
  const steps = [
    step(f.passes, { g_0: i.gapStart, g_1: i.gapEnd, p: i.thread, u: turnOf[i.step] }, exact),
    step(f.loop, { L: closed.path, r: closed.radius }, turns),
  ];
  const value: Value[] = [
    {
      kind: 'count',
      key: 'passes',
      label: 'Turn-and-tighten passes',
      value: Math.max(1, Math.ceil(exact - 1e-9)),
      main: true,
    },
    {
      kind: 'count',
      key: 'turns',
      label: 'Full turns of the blades after each pass',
      value: Math.ceil(turns - 1e-9),
      main: true,
      note: 'So that every part of the belt has gone round once.',
    },
    {
      kind: 'quantity',
      key: 'climbEach',
      label: 'The belt climbs each pass',
      value: climb(stepGap, i.angle),
      units: long,
      decimals: [2, 3],
    },
    {
      kind: 'quantity',
      key: 'slackStart',
      label: 'Belt left over at the start',
      value: belted - open.path,
      units: long,
      decimals: [1, 2],
    },
  ];
  return { value, steps };
}

function fitValues(i: Inputs, belted: number, closed: State): Worked<Value[]> {
  if (i.beltLength === undefined) return { value: [], steps: [] };
  const stretch = (closed.path - belted) / belted;
  const steps = [step(f.stretched, { L: closed.path, L_b: belted }, stretch)];
  const slack = isUnder(closed.path, belted);
  const value: Value[] = [
    {
      kind: 'quantity',
      key: 'stretch',
      label: 'Belt stretched when closed (slack if below 0)',
      value: stretch,
      units: ['%', '%'],
      decimals: [2, 2],
    },
    {
      kind: 'verdict',
      key: 'fitVerdict',
      label: 'Belt length',
      code: slack ? 'stays-slack' : 'draws-tight',
      level: slack ? 'caution' : 'good',
      data: { left: belted - closed.path },
    },
  ];
  return { value, steps };
}

function widthValues(i: Inputs, c: Cones, closed: State): Worked<Value[]> {
  const rides: Value[] =
    i.rim !== undefined && isOver(2 * closed.radius, i.rim)
      ? [
          {
            kind: 'verdict',
            key: 'rimVerdict',
            label: 'Height of the belt',
            code: 'rides-out',
            level: 'caution',
          },
        ]
      : [];
  if (i.beltWidthNow === undefined) return { value: rides, steps: [] };
  const made = c.closed - climb(i.gapEnd, i.angle);
  const faster = made / closed.radius - 1;
  const steps = [step(f.ratio, { d_d: i.drivePulley, r: made }, i.drivePulley / (2 * made))];
  const code = isUnder(i.beltWidthNow, i.beltWidth * (1 - widthSlack))
    ? 'belt-narrow'
    : isOver(i.beltWidthNow, i.beltWidth * (1 + widthSlack))
      ? 'belt-wide'
      : 'belt-width-right';
  const value: Value[] = [
    ...rides,
    {
      kind: 'quantity',
      key: 'sits',
      label: 'The belt sits higher than made for by (lower if below 0), in radius',
      value: closed.radius - made,
      units: long,
      decimals: [2, 3],
    },
    {
      kind: 'quantity',
      key: 'faster',
      label: 'Blades turn faster than with the right belt by',
      value: faster,
      units: ['%', '%'],
      decimals: [1, 1],
    },
    {
      kind: 'verdict',
      key: 'widthVerdict',
      label: 'Width of the belt',
      code,
      level: code === 'belt-width-right' ? 'good' : 'caution',
    },
  ];
  return { value, steps };
}

function pinchValues(i: Inputs, belt: number, closed: State, stepGap: number): Worked<Value[]> {
  const squeeze = (i.gapStart - i.gapEnd) / belt;
  const tilted = tilt(i.gapPinched, 2 * closed.radius);
  const wobble = runOut(i.blade, tilted);
  const oneGo = !isOver(i.gapStart - i.gapEnd, stepGap);
  const steps = [
    step(f.squeeze, { g_0: i.gapStart, g_1: i.gapEnd, w_b: belt }, squeeze),
    step(f.tilted, { g_p: i.gapPinched, r: closed.radius }, tilted),
    step(f.wobble, { D_b: i.blade, epsilon: tilted }, wobble),
  ];
  const value: Value[] = [
    {
      kind: 'verdict',
      key: 'verdict',
      label: 'In one go',
      code: oneGo ? 'one-pass-enough' : 'one-go-pinches',
      level: oneGo ? 'good' : 'caution',
      main: true,
      data: { squeeze: squeeze * 100 },
    },
    {
      kind: 'quantity',
      key: 'squeeze',
      label: 'Squeeze of the belt’s width if drawn together at a standstill',
      value: squeeze,
      units: ['%', '%'],
      decimals: [0, 0],
    },
    {
      kind: 'quantity',
      key: 'tilt',
      label: 'Tilt of a half nipped on one side',
      value: tilted,
      units: ['°', '°'],
      decimals: [2, 2],
    },
    {
      kind: 'quantity',
      key: 'runOut',
      label: 'Run-out at the rim of the blade from that',
      value: wobble,
      units: long,
      decimals: [2, 3],
    },
  ];
  return { value, steps };
}

function statesTable(states: readonly State[], belted: number, drive: number): Value {
  return {
    kind: 'table',
    key: 'states',
    label: 'State after each pass',
    columns: [
      { key: 'pass', label: 'Pass', decimals: 0 },
      { key: 'gap', label: 'Gap', units: long, decimals: [2, 3] },
      { key: 'radius', label: 'Pitch radius', units: long, decimals: [2, 3] },
      { key: 'path', label: 'Belt path', units: long, decimals: [1, 2] },
      { key: 'slack', label: 'Belt left over', units: long, decimals: [1, 2] },
      { key: 'ratio', label: 'Blade turns per drive turn', decimals: 3 },
    ],
    rows: states.map((s) => [s.pass, s.gap, s.radius, s.path, belted - s.path, drive / (2 * s.radius)]),
  };
}
