/** content/shop/machines: one file per machine the shop sees, with its plate in figures that forms can take over. */
import { z } from 'astro/zod';
import { describeProblem } from '../core/contract/messages.ts';
import { facts, origins, readFacts, type Fact, type FactKey, type Facts, type Origin } from '../core/machine/index.ts';
import { isOver, isUnder } from '../core/thresholds/index.ts';
import { inOthers } from './languages.ts';
import { machineKinds } from './machine-kinds.ts';

const figure = z.union([z.string().min(1), z.number(), z.boolean()]);
const origin = z.enum(Object.keys(origins) as [Origin, ...Origin[]]);

/** A bare figure is the plate's; anything else says where it comes from. */
const fact = z.union([figure, z.strictObject({ value: figure, from: origin })]);

const keys = facts.map((f) => f.key) as [FactKey, ...FactKey[]];

/** Share by which the blade shaft's speed may differ from engine speed and pulleys: belts slip, plates round. */
const plateSlack = 0.03;

const written = z.strictObject({
  name: z.string().min(2).describe('Name of the machine, as the shop calls it.'),
  kind: z.enum(machineKinds).describe('What kind of machine it is: the pages that speak of that kind are its pages.'),
  summary: z.string().min(10).describe('What it is, in one sentence.'),
  ...inOthers(
    z.strictObject({ name: z.string().min(2), summary: z.string().min(10) }),
    (language) => `The same for customers who read ${language}.`,
  ),
  facts: z
    .partialRecord(z.enum(keys), fact)
    .default({})
    .describe('Figures a form can take over; src/core/machine/facts.ts lists them. A bare figure is from the plate.'),
  plate: z
    .array(
      z.strictObject({
        label: z.string().min(2).describe('What it is, like "Serial number".'),
        value: z.string().min(1).describe('What stands there.'),
      }),
    )
    .default([])
    .describe('What else the plate or the manual says, as label and value.'),
});

export const machine = written
  .superRefine((file, context) => {
    const read = readFacts(factsOf(file.facts));
    if (!read.ok) {
      if ('problems' in read)
        for (const problem of read.problems)
          context.addIssue({
            code: 'custom',
            path: ['facts', problem.field],
            message: describeProblem(problem, { fields: facts }),
          });
      return;
    }
    for (const [key, message] of contradictions(read.inputs, file.kind))
      context.addIssue({ code: 'custom', path: ['facts', key], message });
  })
  .transform(({ facts: list, ...file }) => ({ ...file, facts: factsOf(list) }));

function factsOf(list: z.infer<typeof written>['facts']): Facts {
  return Object.fromEntries(
    Object.entries(list).map(([key, value]): [string, Fact] => [
      key,
      typeof value === 'object' ? value : { value, from: 'plate' },
    ]),
  );
}

/** A plate whose figures do not fit each other would make calculators lie. */
function contradictions(read: Partial<Record<FactKey, unknown>>, kind: string): [FactKey, string][] {
  const of = (key: FactKey) => (typeof read[key] === 'number' ? read[key] : undefined);
  const [engine, small, large, spindle, mark] = (
    ['engineSpeed', 'enginePulley', 'bladePulley', 'spindleSpeed', 'markRotation'] as const
  ).map(of);
  const found: [FactKey, string][] = [];
  const rpm = (perSecond: number) => `${Math.round(perSecond * 60)} rpm`;
  // A ring is driven at its rim: its speed does not follow from the pulleys alone.
  if (engine && small && large && spindle && kind !== 'ring-saw') {
    const worked = (engine * small) / large;
    if (isOver(Math.abs(worked - spindle), spindle * plateSlack))
      found.push([
        'spindleSpeed',
        `a speed that fits the rest of the plate: engine speed and pulleys give ${rpm(worked)}`,
      ]);
  }
  if (mark && spindle && isUnder(mark, spindle))
    found.push(['markRotation', `at least the blade shaft's own speed, ${rpm(spindle)}`]);
  if (read.clutch === false && (of('clutchEngages') ?? of('clutchDrum')) !== undefined)
    found.push(['clutch', 'no figures of a clutch on a machine without one, or clutch: true']);
  return found;
}
