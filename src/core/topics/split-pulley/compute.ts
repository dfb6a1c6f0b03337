import { pulleys } from '../belt-tension/index.ts';
import type { InputsOf } from '../../contract/field.ts';
import { step, type WorkingStep } from '../../contract/formula.ts';
import { refuse, type Caution, type Result, type Value } from '../../contract/result.ts';
import { guarded } from '../../contract/guarded.ts';
import { climb, pitchRadius, runOut, tilt, turnsForLoop, type Cones } from './climb.ts';
import { fields } from './fields.ts';
import * as f from './formulas.ts';
import { stateAt, statesOf, type State } from './states.ts';

type Inputs = InputsOf<typeof fields>;

const turnOf = { eighth: 1 / 8, quarter: 1 / 4, half: 1 / 2 } as const;
const long = ['mm', 'in'] as const;
/** A belt this much narrower than made for is worn, this much wider is another belt. Our choice. */
const widthSlack = 0.03;

export const compute = guarded(fields, (i): Result => {
  if (i.gapEnd >= i.gapStart) return refuse('gapEnd', 'gap-not-closing', { start: i.gapStart });
  const belt = i.beltWidthNow ?? i.beltWidth;
  const cones: Cones = { closed: i.closedDiameter / 2, angle: i.angle, nominal: i.beltWidth, belt };
  const lowest = pitchRadius(cones, i.gapStart);
  if (lowest <= i.closedDiameter * 0.05)
    return refuse('gapStart', 'belt-at-the-axle', { climb: climb(i.gapStart, i.angle) });
  const least = (Math.max(pitchRadius(cones, i.gapEnd) * 2, i.closedDiameter) + i.drivePulley) / 2;
  if (i.centre <= least) return refuse('centre', 'pulleys-touch', { least });

  const working: WorkingStep[] = [];
  const stepGap = i.thread * turnOf[i.step];
  const states = statesOf(cones, i.drivePulley, i.centre, i.gapStart, i.gapEnd, stepGap, 25);
  const [open, closed] = [
    stateAt(cones, i.drivePulley, i.centre, 0, i.gapStart),
    stateAt(cones, i.drivePulley, i.centre, 0, i.gapEnd),
  ];
  const belted = i.beltLength ?? closed.path;
  const values: Value[] = [
    ...climbValues(i, cones, open, closed, working),
    ...passValues(i, belted, open, closed, stepGap, working),
    ...fitValues(i, belted, closed, working),
    ...widthValues(i, cones, closed, working),
    ...pinchValues(i, belt, closed, stepGap, working),
    statesTable(states, belted, i.drivePulley),
  ];
  const faster = values.some((v) => v.kind === 'verdict' && v.code === 'belt-narrow');
  const cautions: Caution[] = [{ hazard: 'moving-belt', level: 'danger' }];
  return {
    ok: true,
    values,
    working,
    cautions: faster ? [{ hazard: 'blade-overspeed', level: 'danger' }, ...cautions] : cautions,
  };
});

function climbValues(i: Inputs, c: Cones, open: State, closed: State, working: WorkingStep[]): Value[] {
  const ratioOf = (s: State) => i.drivePulley / (2 * s.radius);
  for (const s of [open, closed]) {
    const { small, large } = pulleys(2 * s.radius, i.drivePulley);
    working.push(
      step(f.radius, { r_c: c.closed, g: s.gap, w: c.nominal, w_b: c.belt, phi: c.angle }, s.radius),
      step(f.path, { C: i.centre, D: large, d: small }, s.path),
      step(f.ratio, { d_d: i.drivePulley, r: s.radius }, ratioOf(s)),
    );
  }
  const climbs = climb(i.gapStart - i.gapEnd, i.angle);
  working.push(step(f.climbed, { g_0: i.gapStart, g_1: i.gapEnd, phi: i.angle }, climbs));
  return [
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
}

function passValues(
  i: Inputs,
  belted: number,
  open: State,
  closed: State,
  stepGap: number,
  working: WorkingStep[],
): Value[] {
  const exact = (i.gapStart - i.gapEnd) / stepGap;
  working.push(step(f.passes, { g_0: i.gapStart, g_1: i.gapEnd, p: i.thread, u: turnOf[i.step] }, exact));
  const turns = turnsForLoop(closed.path, closed.radius);
  working.push(step(f.loop, { L: closed.path, r: closed.radius }, turns));
  return [
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
}

function fitValues(i: Inputs, belted: number, closed: State, working: WorkingStep[]): Value[] {
  if (i.beltLength === undefined) return [];
  const stretch = (closed.path - belted) / belted;
  working.push(step(f.stretched, { L: closed.path, L_b: belted }, stretch));
  const slack = stretch < 0;
  return [
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
}

function widthValues(i: Inputs, c: Cones, closed: State, working: WorkingStep[]): Value[] {
  const values: Value[] = [];
  if (i.rim !== undefined && 2 * closed.radius > i.rim)
    values.push({
      kind: 'verdict',
      key: 'rimVerdict',
      label: 'Height of the belt',
      code: 'rides-out',
      level: 'caution',
    });
  if (i.beltWidthNow === undefined) return values;
  const made = c.closed - climb(i.gapEnd, i.angle);
  const faster = made / closed.radius - 1;
  working.push(step(f.ratio, { d_d: i.drivePulley, r: made }, i.drivePulley / (2 * made)));
  const off = i.beltWidthNow / i.beltWidth - 1;
  const code = off < -widthSlack ? 'belt-narrow' : off > widthSlack ? 'belt-wide' : 'belt-width-right';
  return [
    ...values,
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
}

function pinchValues(i: Inputs, belt: number, closed: State, stepGap: number, working: WorkingStep[]): Value[] {
  const squeeze = (i.gapStart - i.gapEnd) / belt;
  working.push(step(f.squeeze, { g_0: i.gapStart, g_1: i.gapEnd, w_b: belt }, squeeze));
  const tilted = tilt(i.gapPinched, 2 * closed.radius);
  working.push(step(f.tilted, { g_p: i.gapPinched, r: closed.radius }, tilted));
  const wobble = runOut(i.blade, tilted);
  working.push(step(f.wobble, { D_b: i.blade, epsilon: tilted }, wobble));
  const oneGo = i.gapStart - i.gapEnd <= stepGap * (1 + 1e-9);
  return [
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
