/** What the belt has to pull, and the window of static tension that lets it. */
import { step, type WorkingStep } from '../../contract/formula.ts';
import type { BeltInputs, Drive } from './drive.ts';
import * as f from './formulas.ts';
import { arcFactor, tensionRatio, tradeFriction } from './friction.ts';
import { serviceFactor } from './service-factor.ts';
import { centrifugal, staticByCapstan, staticByTrade, strandsWhenSet, type Strands } from './tensions.ts';

/**
 * Window as multiples of the least static tension. Source: bloch-geitner-v4, p. 326: run-in 1.0 to 1.5,
 * first fitting 1.33 times the top of that, because a new belt seats and loses tension.
 */
export const runInWindow = [1, 1.5] as const;
export const newWindow = [1.5, 1.5 * 1.33] as const;

export interface Setting {
  readonly factor: number;
  readonly designPower: number;
  /** Of one belt or rib. */
  readonly pull: number;
  readonly ownTension: number;
  readonly ratio: number;
  readonly least: number;
  readonly low: number;
  readonly high: number;
  /** Middle of the window: what to aim at. */
  readonly aim: number;
  readonly strands: Strands;
}

/**
 * Pull, own tension, and the window of static tension for one belt or rib [N]. The factor typed goes before the
 * table's.
 */
export function solveSetting(i: BeltInputs, d: Drive, working: WorkingStep[]): Setting {
  const factor = i.factor ?? serviceFactor(i.driver, i.load, i.hours);
  const designPower = factor * i.power;
  working.push(step(f.design, { k_s: factor, P: i.power }, designPower));
  const pull = i.power / (d.belts * d.speed);
  working.push(step(f.pull, { P: i.power, z: d.belts, v: d.speed }, pull));
  const ownTension = centrifugal(d.mass, d.speed);
  working.push(step(f.ownTension, { m: d.mass, v: d.speed }, ownTension));

  const G = arcFactor(d.wrap);
  working.push(step(f.arc, { theta: d.wrap }, G));
  const least = staticByTrade(designPower, d.belts, d.speed, G, d.mass);
  working.push(step(f.trade, { G, P_d: designPower, z: d.belts, v: d.speed, T_c: ownTension }, least));
  const ratio = tensionRatio(tradeFriction, d.wrap);
  working.push(step(f.ratio, { theta: d.wrap }, ratio));
  working.push(
    step(
      f.capstan,
      { P_d: designPower, z: d.belts, v: d.speed, R: ratio, T_c: ownTension },
      staticByCapstan(designPower / (d.belts * d.speed), ratio, ownTension),
    ),
  );

  const window = i.beltState === 'new' ? newWindow : runInWindow;
  const [low, high] = [least * window[0], least * window[1]];
  const aim = (low + high) / 2;
  const strands = strandsWhenSet(aim, pull, ownTension);
  working.push(step(f.tight, { T_0: aim, T_c: ownTension, F: pull }, strands.tightWorking));
  working.push(step(f.slack, { T_0: aim, T_c: ownTension, F: pull }, strands.slackWorking));
  return { factor, designPower, pull, ownTension, ratio, least, low, high, aim, strands };
}
