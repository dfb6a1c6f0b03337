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
  expect(valueOf(worked({ age: age * 0.999 }), 'verdict', 'verdict').code).toBe('leave-it');
  expect(valueOf(worked({ age: age * 1.001 }), 'verdict', 'verdict').code).toBe('change-now');
});

it('more than one mean life ahead is said to be too far, exactly one is not', () => {
  // The example's mean life is 350 h.
  const note = (hours: number) => worked({ horizon: `${hours} h` }).values.find((v) => v.key === 'horizonNote');
  expect(note(349)).toBeUndefined();
  expect(note(350)).toBeUndefined();
  expect(note(420)).toMatchObject({ code: 'looks-too-far', data: { lives: 1.2 } });
  expect(words.verdicts['looks-too-far']).toBeDefined();
});

it('a part that fails by chance still has its mean life ahead, however old', () => {
  const a = worked({ shape: 1, lifeAs: 'scale', scale: '400 h', age: '12000 h' });
  expect(valueOf(a, 'remaining', 'quantity').value / 3600).toBeCloseTo(400, 9);
  expect(valueOf(a, 'shapeNote', 'verdict').code).toBe('fails-by-chance');
});
