/** The marking of blade, guard and machine, as verdicts. None is ever softer than what is marked. */
import { step } from '../../contract/formula.ts';
import type { Value } from '../../contract/result.ts';
import type { Worked } from '../../contract/worked.ts';
import { isOver, isUnder } from '../../thresholds/index.ts';
import type { BladeInputs } from './fields.ts';
import { markAsRotation } from './formulas.ts';
import { readMarks, type MarksRead } from './marks.ts';
import { rotationForSpeed } from './surface-speed.ts';

/**
 * Diameter the marks hold for: the printed one, or the measured one where that is larger. A worn blade keeps the diameter
 * it was marked for; a larger one than printed is not believed smaller.
 * @returns [m] Example: printed 350 mm, measured 340 mm -> 350 mm.
 */
export function markedDiameter(i: BladeInputs): number {
  return Math.max(i.diameter, i.newDiameter ?? 0);
}

export interface BladeMarks extends MarksRead {
  readonly count: number;
}

/**
 * The marks of the blade as shaft speeds, with the lines that turn surface speeds into them.
 * @returns undefined when nothing is marked
 */
export function marksOf(i: BladeInputs): Worked<BladeMarks | undefined> {
  const diameter = markedDiameter(i);
  const speeds = [i.markedAs === 'speed' ? i.markedSpeed : undefined, i.alsoSpeed, i.alsoFeet].filter(
    (v) => v !== undefined,
  );
  const rotation = i.markedAs === 'rpm' ? i.markedRotation : i.alsoRotation;
  const read = readMarks({ diameter, rotation, speeds });
  return {
    value: read && { ...read, count: speeds.length + (rotation === undefined ? 0 : 1) },
    steps: speeds.map((v) => step(markAsRotation, { v_m: v, D_m: diameter }, rotationForSpeed(v, diameter))),
  };
}

/**
 * What the marks, the guard and the machine's plate say of this blade.
 * @param free speed of the blade shaft out of the cut, without slip [1/s]
 */
export function markVerdicts(i: BladeInputs, marks: BladeMarks, free: number): Value[] {
  const values: Value[] = [];
  if (marks.count > 1)
    values.push({
      kind: 'verdict',
      key: 'marksVerdict',
      label: 'Marks on the blade',
      code: marks.agree ? 'marks-agree' : 'marks-contradict',
      level: marks.agree ? 'good' : 'stop',
      main: !marks.agree,
      data: { lowest: marks.lowest, highest: marks.highest },
    });
  if (i.guardSize !== undefined) values.push(guardVerdict(i.diameter, markedDiameter(i), i.guardSize));
  if (i.machineRotation !== undefined) {
    const over = isOver(free, i.machineRotation);
    values.push({
      kind: 'verdict',
      key: 'plateVerdict',
      label: 'Machine’s plate',
      code: over ? 'over-plate' : 'within-plate',
      level: over ? 'stop' : 'good',
      main: over,
    });
  }
  if (i.newDiameter !== undefined && isOver(i.newDiameter, i.diameter))
    values.push({
      kind: 'verdict',
      key: 'wornVerdict',
      label: 'Smaller than printed',
      code: i.bladeKind === 'abrasive' ? 'worn-abrasive' : 'worn-diamond',
      level: i.bladeKind === 'abrasive' ? 'note' : 'caution',
    });
  if (i.newDiameter !== undefined && isOver(i.diameter, i.newDiameter * larger))
    values.push({
      kind: 'verdict',
      key: 'largerVerdict',
      label: 'Larger than printed',
      code: 'larger-than-printed',
      level: 'caution',
      main: true,
    });
  return values;
}

/** A blade that measures this much more than its label is not the blade of that label; less is how a tape is read. Our choice. */
const larger = 1.01;

/** A guard more than this much larger than the blade leaves more of it open than it was made to. Our choice. */
const muchSmaller = 0.85;

/** A blade of a larger saw, worn down until it goes under the guard, is still a blade of a larger saw. */
function guardVerdict(diameter: number, marked: number, guard: number): Value {
  const code = isOver(marked, guard)
    ? 'over-guard'
    : isUnder(diameter, guard * muchSmaller)
      ? 'under-guard'
      : 'within-guard';
  return {
    kind: 'verdict',
    key: 'guardVerdict',
    label: 'Guard',
    code,
    level: code === 'over-guard' ? 'stop' : code === 'under-guard' ? 'note' : 'good',
    main: code === 'over-guard',
  };
}
