/** checks/: what a customer looks at before a cut, one list for each group of machines, in both languages side by side. */
import { z } from 'astro/zod';
import { id } from './article.ts';
import { machineKinds } from './machine-kinds.ts';
import { day, text } from './words.ts';

const said = {
  /** Two or three words. */
  name: z.string().max(40).pipe(text(2)),
  /** Enough for somebody who has done it before. */
  say: z.string().max(90).pipe(text(10)),
  /** What to look at, in order, for somebody who has not. */
  more: z.string().max(600).pipe(text(20)),
};

const check = z.strictObject({
  id,
  ...said,
  es: z.strictObject(said),
  /** Caution that stands before it, by file name in hazards/. */
  hazard: id.optional(),
  /** Parts it looks at, by id in parts/: where its number stands on the drawing of the machine. */
  parts: z.array(id).default([]),
  /** The engine runs from this check on. */
  running: z.boolean().default(false),
});

export const checkList = z
  .strictObject({
    title: z.string().min(5).max(70),
    es: z.strictObject({ title: z.string().min(5).max(70) }),
    kinds: z.array(z.enum(machineKinds)).min(1),
    reviewed: day,
    /** In the order of use. */
    groups: z
      .array(
        z.strictObject({
          name: z.string().min(3).max(40),
          es: z.string().min(3).max(40),
          checks: z.array(check).min(1),
        }),
      )
      .min(1),
    sources: z.array(id).min(1),
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
