/**
 * A figure asked for only with one choice is undefined by its type, and the sums write `?? 0` for the case that can't be.
 * Here it is shown that it can't: asked for and left out, it is missed by name, and no nought stands in for it.
 */
import { expect, it } from 'vitest';
import type { Field, Inputs } from '../../../src/core/contract/field.ts';
import { readInputs } from '../../../src/core/contract/read-inputs.ts';
import type { Topic } from '../../../src/core/contract/topic.ts';
import { fromUnit } from '../../../src/core/quantity/index.ts';
import { topics } from '../../../src/core/registry.ts';

/** Any lawful figure [SI]; only whether it is there counts. */
function some(field: Field): Inputs[string] {
  if ('default' in field && field.default !== undefined && field.kind !== 'rows')
    return field.kind === 'quantity' ? fromUnit(field.default, field.units[0]) : field.default;
  return field.kind === 'quantity'
    ? fromUnit(field.min === undefined || field.min === 0 ? 1 : field.min, field.units[0])
    : 'min' in field
      ? field.min === undefined || field.min === 0
        ? 1
        : field.min
      : undefined;
}

/** The example with the choices made that ask for a field, and every field then asked for given. */
function asking({ fields, example }: Topic, field: Field): Record<string, Inputs[string]> {
  const read = readInputs(fields, example, {});
  const inputs: Record<string, Inputs[string]> = read.ok ? { ...read.inputs } : {};
  for (let f: Field | undefined = field; f?.when; f = fields.find((x) => x.key === f?.when?.field))
    inputs[f.when.field] = f.when.is[0];
  for (const f of fields) inputs[f.key] ??= f.optional ? undefined : some(f);
  return inputs;
}

const conditional = Object.entries(topics).flatMap(([name, topic]) =>
  topic.fields.filter((f) => f.when && !f.optional && f.kind !== 'rows').map((f) => [name, f.key, topic, f] as const),
);

it.each(conditional)('%s misses %s by name where it is asked for', (_, key, topic, field) => {
  const inputs = asking(topic, field);
  const result = topic.compute(Object.fromEntries(Object.entries(inputs).filter(([k]) => k !== key)));
  expect(result.ok ? [] : result.problems.filter((p) => p.field === key)).toEqual([{ field: key, code: 'missing' }]);
});

it('there are such figures to try', () => expect(conditional.length).toBeGreaterThan(60));
