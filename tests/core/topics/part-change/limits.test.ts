/** The verdicts of the part while it is open, just on both sides of where they turn. */
import { expect, it } from 'vitest';
import type { RawInputs } from '../../../../src/core/contract/field.ts';
import { readInputs } from '../../../../src/core/contract/read-inputs.ts';
import { valueOf, type Answer } from '../../../../src/core/contract/result.ts';
import { compute, example, fields, words } from '../../../../src/core/topics/part-change/index.ts';

function worked(raw: RawInputs): Answer {
  const read = readInputs(fields, { ...example, ...raw });
  const result = read.ok ? compute(read.inputs) : read;
  if (!('values' in result)) throw new Error(JSON.stringify(result));
  return result;
}

it('changing pays from the age it names on, not before', () => {
  const age = valueOf(worked({}), 'ageToChange', 'quantity').value / 3600;
  const costs = (hours: number) =>
    ['costNow', 'costLeave'].map((k) => valueOf(worked({ age: hours }), k, 'money').value);
  const [cheaper, dearer] = [costs(age * 0.99), costs(age * 1.01)];
  expect(cheaper[0]).toBeGreaterThan(cheaper[1] as number);
  expect(dearer[0]).toBeLessThan(dearer[1] as number);
  expect(valueOf(worked({ age }), 'verdict', 'verdict').code).toBe('about-even');
});

it('more than one mean life ahead is said to be too far, exactly one is not', () => {
  // The example's mean life is 350 h.
  const verdict = (hours: number) => valueOf(worked({ horizon: `${hours} h` }), 'verdict', 'verdict');
  expect(verdict(349).code).not.toBe('looks-too-far');
  expect(verdict(350).code).not.toBe('looks-too-far');
  expect(verdict(420)).toMatchObject({ code: 'looks-too-far', level: 'caution', data: { lives: 1.2 } });
  // Neither way of a failed part is advised either.
  const mending = worked({ horizon: '420 h', mend: true, replaceCost: 120, mendCost: 45, mendWear: 1.7 });
  expect(mending.values.find((v) => v.key === 'mendVerdict')).toBeUndefined();
  expect(words.verdicts['looks-too-far']).toBeDefined();
});

it('a part that fails by chance still has its mean life ahead, however old', () => {
  const a = worked({ shape: 1, lifeAs: 'scale', scale: '400 h', age: '12000 h' });
  expect(valueOf(a, 'remaining', 'quantity').value / 3600).toBeCloseTo(400, 9);
  expect(valueOf(a, 'shapeNote', 'verdict').code).toBe('fails-by-chance');
});
