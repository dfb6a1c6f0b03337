/** What the belt has to pull, and the window of static tension that lets it. */
import { step } from '../../contract/formula.ts';
import type { Value } from '../../contract/result.ts';
import type { Worked } from '../../contract/worked.ts';
import type { BeltInputs, Drive } from './drive.ts';
import * as f from './formulas.ts';
import { arcFactor, tensionRatio, tradeFriction } from './friction.ts';
import { isRibbed } from './tables.ts';
import { centrifugal, staticByCapstan, staticByTrade, strandsWhenSet, type Strands } from './tensions.ts';

const forceUnits = ['N', 'lbf'] as const;
const ribbedNote =
  'Reckoned at the V belt’s tight to slack ratio of 5 to 1. Ribbed belts are often reckoned at 4 to 1 (from memory), ' +
  'which asks for about a tenth more.';

export type Driver = 'single' | 'multi' | 'motor';
export type Hours = 'short' | 'day' | 'long';
export type Load = 'light' | 'medium' | 'heavy' | 'crushing';

/** Rows up to heavy: service-factor-table. Crushing: the row was not seen and stands from memory (service-factor-crushing). */
const normal: Readonly<Record<Load, readonly [number, number, number]>> = {
  light: [1, 1.1, 1.2],
  medium: [1.1, 1.2, 1.3],
  heavy: [1.2, 1.3, 1.4],
  crushing: [1.3, 1.4, 1.5],
};
const rough: Readonly<Record<Load, readonly [number, number, number]>> = {
  light: [1.1, 1.2, 1.3],
  medium: [1.2, 1.3, 1.4],
  heavy: [1.4, 1.5, 1.6],
  crushing: [1.5, 1.6, 1.8],
};

/**
 * Service factor by engine, work and hours a day.
 * Single-cylinder engines stand in the high-torque columns, engines with more cylinders in the normal ones.
 * @param driver what turns it @param load the work @param hours a day @returns factor [1], 1.0 to 1.8
 * Example: single cylinder, heavy, 3 to 5 h a day -> 1.4. Concrete saws are in no table: "heavy" is a judgement.
 */
export function serviceFactor(driver: Driver, load: Load, hours: Hours): number {
  const row = (driver === 'single' ? rough : normal)[load];
  return row[hours === 'short' ? 0 : hours === 'day' ? 1 : 2];
}

/** Source id of the row: the crushing row stands from memory. */
export function serviceSource(load: Load): string {
  return load === 'crushing' ? 'service-factor-crushing' : 'service-factor-table';
}

/** How much tighter than a run-in belt at its tightest a new one is first set. Source: bloch-geitner-v4, p. 326. */
export const firstFit = 1.33;

/**
 * Window as multiples of the least static tension. Source: bloch-geitner-v4, p. 326: run-in 1.0 to 1.5,
 * first fitting 1.33 times the top of that, because a new belt seats and loses tension.
 */
export const runInWindow = [1, 1.5] as const;
export const newWindow = [1.5, 1.5 * firstFit] as const;

/** What a belt is set to, SI: forces in N, power in W. */
export interface Setting {
  readonly factor: number;
  readonly designPower: number;
  /** Of one belt or rib. */
  readonly pull: number;
  /** Centrifugal tension of one belt or rib. */
  readonly centrifugal: number;
  readonly ratio: number;
  readonly least: number;
  readonly low: number;
  readonly high: number;
  /** Middle of the window: what to aim at. */
  readonly aim: number;
  readonly strands: Strands;
}

/** The window of static tension for the power to carry, and the strands at its middle. */
export function solveSetting(i: BeltInputs, d: Drive): Worked<Setting> {
  const factor = i.factor ?? serviceFactor(i.driver, i.load, i.hours);
  const designPower = factor * i.power;
  const pull = i.power / (d.belts * d.speed);
  const designPull = designPower / (d.belts * d.speed);
  const T_c = centrifugal(d.mass, d.speed);
  const G = arcFactor(d.wrap);
  const least = staticByTrade(designPower, d.belts, d.speed, G, d.mass);
  const ratio = tensionRatio(tradeFriction, d.wrap);
  const window = i.beltState === 'new' ? newWindow : runInWindow;
  const [low, high] = [least * window[0], least * window[1]];
  const aim = (low + high) / 2;
  const strands = strandsWhenSet(aim, pull, T_c);
  const design = { P_d: designPower, z: d.belts, v: d.speed };
  return {
    value: { factor, designPower, pull, centrifugal: T_c, ratio, least, low, high, aim, strands },
    steps: [
      step(f.design, { k_s: factor, P: i.power }, designPower),
      step(f.pull, { P: i.power, z: d.belts, v: d.speed }, pull),
      step(f.centrifugal, { m: d.mass, v: d.speed }, T_c),
      step(f.arc, { theta: d.wrap }, G),
      step(f.trade, { G, ...design, T_c }, least),
      step(f.ratio, { theta: d.wrap }, ratio),
      step(f.capstan, { ...design, R: ratio, T_c }, staticByCapstan(designPull, ratio, T_c)),
      step(f.tight, { T_0: aim, T_c, F: pull }, strands.tightWorking),
      step(f.slack, { T_0: aim, T_c, F: pull }, strands.slackWorking),
    ],
  };
}

/** The setting as values; the strands under both of the names books give them. */
export function settingValues(i: BeltInputs, s: Setting): Value[] {
  const t = s.strands;
  return [
    {
      kind: 'quantity',
      key: 'staticTension',
      label: 'Static tension of one belt or rib',
      value: s.aim,
      low: s.low,
      high: s.high,
      units: forceUnits,
      figures: 2,
      main: true,
      ...(isRibbed(i.section) ? { note: ribbedNote } : {}),
    },
    {
      kind: 'number',
      key: 'serviceFactor',
      label: 'Service factor',
      value: s.factor,
      decimals: 1,
      ...(i.factor === undefined ? { source: serviceSource(i.load) } : {}),
    },
    {
      kind: 'quantity',
      key: 'designPower',
      label: 'Power the belt is set for',
      value: s.designPower,
      units: ['kW', 'hp'],
    },
    {
      kind: 'quantity',
      key: 'pull',
      label: 'Effective pull of one belt or rib',
      value: s.pull,
      units: forceUnits,
      decimals: [1, 2],
    },
    {
      kind: 'quantity',
      key: 'centrifugal',
      label: 'Centrifugal tension, from the belt’s own mass',
      value: s.centrifugal,
      units: forceUnits,
      decimals: [1, 2],
    },
    {
      kind: 'table',
      key: 'strands',
      label: 'Strands of one belt or rib, running, set to the middle of the window',
      note: 'Books use the same letters for both columns. The first turns the pulley and loads the shaft; the second is what the belt’s cords feel.',
      columns: [
        { key: 'side', label: 'Side' },
        { key: 'working', label: 'Working tension (without centrifugal)', units: forceUnits, decimals: [1, 2] },
        { key: 'inBelt', label: 'Tension in the belt (with centrifugal)', units: forceUnits, decimals: [1, 2] },
      ],
      rows: [
        ['Tight side', t.tightWorking, t.tightInBelt],
        ['Slack side', t.slackWorking, t.slackInBelt],
      ],
    },
  ];
}
