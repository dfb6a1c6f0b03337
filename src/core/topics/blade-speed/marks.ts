/** The figures marked on a blade, against each other. */
import { isOver } from '../../thresholds/index.ts';
import { rotationForSpeed } from './surface-speed.ts';

export interface Marks {
  /** [m], as printed on the blade. */
  readonly diameter: number;
  /** [1/s] */
  readonly rotation?: number | undefined;
  /** [m/s], each as marked. */
  readonly speeds: readonly number[];
}

/** Labels print rounded figures; further apart than this they contradict each other. Our choice: printed rpm were up to 1 % off. */
export const marksAgreeWithin = 0.02;

export interface MarksRead {
  /** The lowest of all marks, as shaft speed at the printed diameter [1/s]: the one to obey. */
  readonly lowest: number;
  readonly highest: number;
  /** highest / lowest - 1 */
  readonly apart: number;
  readonly agree: boolean;
}

/**
 * Reads all speed marks of a blade as shaft speeds.
 * Formula: n = v / (pi D), with D the diameter printed on the blade; never the worn one, which would allow more.
 * @returns undefined when nothing is marked
 * Example: 350 mm marked 80 m/s and 4365 rpm agree; 80 m/s and 5450 rpm do not: obey 4365.
 */
export function readMarks({ diameter, rotation, speeds }: Marks): MarksRead | undefined {
  const all = [...(rotation === undefined ? [] : [rotation]), ...speeds.map((v) => rotationForSpeed(v, diameter))];
  if (all.length === 0) return undefined;
  const [lowest, highest] = [Math.min(...all), Math.max(...all)];
  const apart = highest / lowest - 1;
  return { lowest, highest, apart, agree: !isOver(highest, lowest * (1 + marksAgreeWithin)) };
}
