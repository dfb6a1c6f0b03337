/** What the setting does to bearings, grip, belt and life, and the travel the machine must have. */
import { step } from '../../contract/formula.ts';
import type { Value } from '../../contract/result.ts';
import type { Worked } from '../../contract/worked.ts';
import { isOver, isUnder } from '../../thresholds/index.ts';
import type { BeltInputs, Drive } from './drive.ts';
import * as f from './formulas.ts';
import { tensionRatio, tradeFriction } from './friction.ts';
import { lifeShare } from './life.ts';
import type { Setting } from './setting.ts';
import { beltArea, highestSpeed, isRibbed, textbookStress } from './tables.ts';
import { pullBeforeSlip, shaftLoadRunning, shaftLoadStatic, strandsAtSlip } from './tensions.ts';

/** How much over the top of the window the "life" figure looks. */
const over = 1.2;
/** Under this margin little is left when wet. Our choice. */
export const wetNear = 1.2;
/** Center travel as shares of the belt length. Source: iso-155 (memory). */
const [takeUpShare, fittingShare] = [0.03, 0.015];
/** A belt stressed beyond this many times what a textbook allows is no longer a matter of tables. Our choice. */
export const overload = 2;

export interface BearingLoads {
  /** On the bearing next to the pulley [N]. */
  readonly near: number;
  /** On the far bearing [N]; it pulls the other way. */
  readonly far: number;
}

/**
 * Loads on the two bearings of a shaft with an overhung pulley.
 * Formula (moments about each bearing): near = F (a + b) / b, far = F a / b.
 * @param pull pull of the belt on the shaft, F [N], >= 0
 * @param overhang from the middle of the pulley to the middle of the near bearing, a [m], >= 0; 0 puts it all on the near one
 * @param apart between the middles of the bearings, b [m], > 0
 * @returns both loads [N]; their difference is F
 * Assumes a stiff shaft and no other load on it.
 * Example: 600 N, 25 mm out, bearings 50 mm apart -> 900 N near, 300 N far.
 * Source: statics (arithmetic).
 */
export function bearingLoads(pull: number, overhang: number, apart: number): BearingLoads {
  return { near: (pull * (overhang + apart)) / apart, far: (pull * overhang) / apart };
}

/** What the setting means for belt, shafts, bearings, grip and life, in the order the page shows it. */
export function consequenceValues(i: BeltInputs, d: Drive, s: Setting): Worked<Value[]> {
  const parts = [shaftValues(i, d, s), gripValues(i, d, s), lifeValue(s), travelValues(i, d)];
  return { value: parts.flatMap((p) => p.value), steps: parts.flatMap((p) => p.steps) };
}

/**
 * Whether this belt can be the belt of this drive at all: its speed, and for V belts the stress its work alone puts in
 * the tight strand. A window of tension is worked out for any belt, however small; this is what says that it is too small.
 */
export function beltValues(i: BeltInputs, d: Drive, s: Setting): Worked<Value[]> {
  const limit = highestSpeed(i.section);
  const fast: Value[] = isOver(d.speed, limit)
    ? [
        {
          kind: 'verdict',
          key: 'speedVerdict',
          label: 'Belt speed',
          code: 'belt-too-fast',
          level: 'caution',
          main: true,
          source: 'belt-speed-limits',
          data: { speed: d.speed, limit },
        },
      ]
    : [];
  if (isRibbed(i.section)) return { value: fast, steps: [] };
  const area = beltArea(i.section);
  const tight = strandsAtSlip(s.pull, s.ratio, s.centrifugal).tightInBelt;
  const stress = tight / area;
  const overloaded = isOver(stress, overload * textbookStress);
  return {
    value: [
      ...fast,
      ...(overloaded
        ? [
            {
              kind: 'verdict',
              key: 'loadVerdict',
              label: 'Power for each belt',
              code: 'belt-overloaded',
              level: 'caution',
              main: true,
              source: 'jindal-design',
              data: { times: stress / textbookStress, power: i.power / d.belts },
            } as const,
          ]
        : []),
      {
        kind: 'quantity',
        key: 'beltStress',
        label: 'Stress in the belt, tight side, from the work alone',
        value: stress,
        units: ['MPa', 'psi'],
        figures: 2,
        source: 'belt-section-sizes',
      },
    ],
    steps: [step(f.stress, { F: s.pull, R: s.ratio, T_c: s.centrifugal, A_b: area }, stress)],
  };
}

function shaftValues(i: BeltInputs, d: Drive, s: Setting): Worked<Value[]> {
  const rest = (t: number) => shaftLoadStatic(t, d.belts, d.wrap);
  const { tightWorking, slackWorking } = s.strands;
  const running = shaftLoadRunning(tightWorking, slackWorking, d.belts, d.wrap);
  const { near, far } = bearingLoads(running, i.overhang, i.bearingsApart);
  const arms = { F_r: running, a: i.overhang, b: i.bearingsApart };
  const strands = { z: d.belts, T_tight: tightWorking, T_slack: slackWorking, theta: d.wrap };
  const steps = [
    step(f.shaftRest, { z: d.belts, T_0: s.aim, theta: d.wrap }, rest(s.aim)),
    step(f.shaftRun, strands, running),
    step(f.nearBearing, arms, near),
    step(f.farBearing, arms, far),
  ];
  const value: Value[] = [
    {
      kind: 'quantity',
      key: 'shaftStatic',
      label: 'Pull on each shaft at rest',
      value: rest(s.aim),
      low: rest(s.low),
      high: rest(s.high),
      units: ['N', 'lbf'],
      decimals: [0, 0],
    },
    {
      kind: 'quantity',
      key: 'shaftRunning',
      label: 'Pull on each shaft, running',
      value: running,
      units: ['N', 'lbf'],
      decimals: [0, 0],
    },
    {
      kind: 'quantity',
      key: 'nearBearing',
      label: 'Load on the blade-shaft bearing beside the pulley',
      value: near,
      units: ['N', 'lbf'],
      decimals: [0, 0],
    },
    {
      kind: 'quantity',
      key: 'farBearing',
      label: 'Load on the far blade-shaft bearing',
      value: far,
      units: ['N', 'lbf'],
      decimals: [0, 0],
      note: 'It pulls the other way.',
    },
  ];
  return { value, steps };
}

function gripValues(i: BeltInputs, d: Drive, s: Setting): Worked<Value[]> {
  const wetRatio = tensionRatio(tradeFriction * i.wetGrip, d.wrap);
  const marginAt = (ratio: number) => pullBeforeSlip(s.aim, ratio, s.centrifugal) / s.pull;
  const put = { T_0: s.aim, T_c: s.centrifugal, F: s.pull };
  const [dry, wet] = [marginAt(s.ratio), marginAt(wetRatio)];
  const steps = [
    step(f.wetRatio, { g: i.wetGrip, theta: d.wrap }, wetRatio),
    step(f.margin, { ...put, R: s.ratio }, dry),
    step(f.margin, { ...put, R: wetRatio }, wet),
  ];
  const slips = isUnder(wet, 1);
  const near = isUnder(wet, wetNear);
  const value: Value[] = [
    {
      kind: 'number',
      key: 'slipMargin',
      label: 'Slip margin, dry',
      value: dry,
      decimals: 2,
      note: 'Pull the belt can give before it slips, for each unit of pull it needs.',
    },
    {
      kind: 'number',
      key: 'slipMarginWet',
      label: 'Slip margin, wet or coated with slurry',
      value: wet,
      decimals: 2,
      source: 'wet-belt-grip',
    },
    {
      kind: 'verdict',
      key: 'wetVerdict',
      label: 'When wet',
      code: slips ? 'wet-slips' : near ? 'wet-near' : 'wet-holds',
      level: slips ? 'caution' : near ? 'note' : 'good',
    },
  ];
  return { value, steps };
}

function lifeValue(s: Setting): Worked<Value[]> {
  const peak = s.strands.tightInBelt + (s.high * over - s.aim);
  const share = lifeShare(peak, s.strands.tightInBelt);
  return {
    value: [
      {
        kind: 'quantity',
        key: 'lifeOver',
        label: 'Belt life left if set 20 % over the window',
        value: share,
        units: ['%', '%'],
        decimals: [0, 0],
      },
    ],
    steps: [step(f.life, { T_set: s.strands.tightInBelt, T_peak: peak }, share)],
  };
}

function travelValues(i: BeltInputs, d: Drive): Worked<Value[]> {
  const [tighten, fit] = [takeUpShare * d.length, fittingShare * d.length];
  const steps = [
    step(f.takeUp, { L: d.length }, tighten),
    step(f.fitting, { L: d.length }, fit),
    step(f.turns, { x_t: tighten, p: i.thread }, tighten / i.thread),
  ];
  const value: Value[] = [
    {
      kind: 'quantity',
      key: 'takeUp',
      label: 'Travel to keep for tightening, shafts apart',
      value: tighten,
      units: ['mm', 'in'],
      decimals: [0, 2],
      source: 'iso-155',
    },
    {
      kind: 'quantity',
      key: 'fitting',
      label: 'Travel to get the belt on, shafts together',
      value: fit,
      units: ['mm', 'in'],
      decimals: [0, 2],
      source: 'iso-155',
    },
    {
      kind: 'number',
      key: 'screwTurns',
      label: 'Screw turns for the tightening travel',
      value: tighten / i.thread,
      decimals: 1,
    },
  ];
  return { value, steps };
}
