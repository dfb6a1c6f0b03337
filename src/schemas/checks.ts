/** checks/: what a customer looks at before a cut, one list for each group of machines, in all languages side by side. */
import { z } from 'astro/zod';
import { id } from './article.ts';
import { inOthers } from './languages.ts';
import { machineKinds } from './machine-kinds.ts';
import { day, text } from './words.ts';

const said = {
  name: z.string().max(40).pipe(text(2)).describe('Two or three words.'),
  say: z.string().max(90).pipe(text(10)).describe('Enough for somebody who has done it before.'),
  more: z.string().max(600).pipe(text(20)).describe('What to look at, in order, for somebody who has not.'),
};

const check = z.strictObject({
  id: id.describe('A short name of its own.'),
  ...said,
  ...inOthers(z.strictObject(said)),
  hazard: id.optional().describe('Caution that stands before it, by file name in hazards/.'),
  parts: z
    .array(id)
    .default([])
    .describe('Parts it looks at, by id in parts/: where its number stands on the drawing of the machine.'),
  running: z.boolean().default(false).describe('The engine runs from this check on.'),
});

export const checkList = z
  .strictObject({
    title: z.string().min(5).max(70).describe('Heading of the list.'),
    ...inOthers(z.strictObject({ title: z.string().min(5).max(70) })),
    kinds: z.array(z.enum(machineKinds)).min(1).describe('Kinds of machine it is for.'),
    reviewed: day.describe('Day somebody in the shop last went through it, as YYYY-MM-DD.'),
    groups: z
      .array(
        z.strictObject({
          name: z.string().min(3).max(40).describe('What the group is looked at for.'),
          ...inOthers(z.string().min(3).max(40)),
          checks: z.array(check).min(1).describe('In the order of use.'),
        }),
      )
      .min(1)
      .describe('In the order of use.'),
    sources: z.array(id).min(1).describe('What it rests on, by file name in sources/.'),
  })
  .superRefine((file, context) => {
    const ids = file.groups.flatMap((g) => g.checks.map((c) => c.id));
    ids.forEach((name, k) => {
      if (ids.indexOf(name) < k)
        context.addIssue({
          code: 'custom',
          path: ['groups'],
          message: `each check its own id; "${name}" stands twice`,
        });
    });
  });

export type CheckList = z.infer<typeof checkList>;
