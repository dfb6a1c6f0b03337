/** What the setting does to bearings, grip and life, and the travel the machine must have. */
import { step, type WorkingStep } from '../../contract/formula.ts';
import type { Value } from '../../contract/result.ts';
import { bearingLoads } from './bearing-loads.ts';
import type { BeltInputs, Drive } from './drive.ts';
import * as f from './formulas.ts';
import { tensionRatio, tradeFriction } from './friction.ts';
import { lifeShare } from './life.ts';
import type { Setting } from './setting.ts';
import { pullBeforeSlip, shaftLoadRunning, shaftLoadStatic } from './tensions.ts';

/** How much over the top of the window the "life" figure looks. */
const over = 1.2;

/** What the tension does to bearings, grip and life: values [SI], working pushed in their order. */
export function consequenceValues(i: BeltInputs, d: Drive, s: Setting, working: WorkingStep[]): Value[] {
  return [
    ...shaftValues(i, d, s, working),
    ...gripValues(i, d, s, working),
    lifeValue(s, working),
    ...travelValues(i, d, working),
  ];
}

function shaftValues(i: BeltInputs, d: Drive, s: Setting, working: WorkingStep[]): Value[] {
  const rest = (t: number) => shaftLoadStatic(t, d.belts, d.wrap);
  working.push(step(f.shaftRest, { z: d.belts, T_0: s.aim, theta: d.wrap }, rest(s.aim)));
  const { tightWorking, slackWorking } = s.strands;
  const running = shaftLoadRunning(tightWorking, slackWorking, d.belts, d.wrap);
  working.push(step(f.shaftRun, { z: d.belts, T_tight: tightWorking, T_slack: slackWorking, theta: d.wrap }, running));
  const { near, far } = bearingLoads(running, i.overhang, i.bearingsApart);
  const arms = { F_r: running, a: i.overhang, b: i.bearingsApart };
  working.push(step(f.nearBearing, arms, near), step(f.farBearing, arms, far));
  return [
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
}

function gripValues(i: BeltInputs, d: Drive, s: Setting, working: WorkingStep[]): Value[] {
  const marginAt = (tension: number, ratio: number): number => {
    const margin = pullBeforeSlip(tension, ratio, s.ownTension) / s.pull;
    working.push(step(f.margin, { T_0: tension, T_c: s.ownTension, F: s.pull, R: ratio }, margin));
    return margin;
  };
  const wetRatio = tensionRatio(tradeFriction * i.wetGrip, d.wrap);
  working.push(step(f.wetRatio, { g: i.wetGrip, theta: d.wrap }, wetRatio));
  const dry = marginAt(s.aim, s.ratio);
  const wet = marginAt(s.aim, wetRatio);
  return [
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
      code: wet < 1 ? 'wet-slips' : wet < 1.2 ? 'wet-near' : 'wet-holds',
      level: wet < 1 ? 'caution' : wet < 1.2 ? 'note' : 'good',
    },
  ];
}

function lifeValue(s: Setting, working: WorkingStep[]): Value {
  const peak = s.strands.tightInBelt + (s.high * over - s.aim);
  const share = lifeShare(peak, s.strands.tightInBelt);
  working.push(step(f.life, { T_set: s.strands.tightInBelt, T_peak: peak }, share));
  return {
    kind: 'quantity',
    key: 'lifeOver',
    label: 'Belt life left if set 20 % over the window',
    value: share,
    units: ['%', '%'],
    decimals: [0, 0],
  };
}

function travelValues(i: BeltInputs, d: Drive, working: WorkingStep[]): Value[] {
  const [tighten, fit] = [0.03 * d.length, 0.015 * d.length];
  working.push(
    step(f.takeUp, { L: d.length }, tighten),
    step(f.fitting, { L: d.length }, fit),
    step(f.turns, { x_t: tighten, p: i.thread }, tighten / i.thread),
  );
  return [
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
}
