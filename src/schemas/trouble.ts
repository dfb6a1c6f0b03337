/** trouble/: a complaint as whoever uses the saw has it. One file for both languages; its pages say what to look at, what to leave alone and when to bring it in. */
import { z } from 'astro/zod';
import { id } from './article.ts';
import { machineKinds } from './machine-kinds.ts';
import { day, text } from './words.ts';

/** One line of a list; **bold** for the words that carry it. */
const lines = z.array(z.string().max(170).pipe(text(10))).min(1);

const said = {
  /** As the customer would say it. */
  title: z.string().max(60).pipe(text(5)),
  /** One line under the heading. */
  line: z.string().max(120).pipe(text(10)),
  /** What may be looked at without tools, in order. */
  look: lines.max(4),
  /** What not to do and not to open; every line starts with "Do not". */
  leave: lines.max(4),
  /** When to stop and bring it in. */
  bring: lines.max(4),
  /** Other words people search by. Not shown. */
  aliases: z.array(text()).default([]),
};

export const trouble = z.strictObject({
  ...said,
  es: z.strictObject(said),
  /** The one caution at the top, by file name in hazards/. */
  hazard: id,
  /** Place in the list of complaints, 1 first. */
  order: z.number().int().min(1).max(99),
  kinds: z.array(z.enum(machineKinds)).min(1),
  reviewed: day,
  /** The same complaint at the bench, by page. */
  related: z.array(z.string().regex(/^(?:faults|guides|jobs)\/[a-z0-9-]+$/)).default([]),
  sources: z.array(id).min(1),
});

export type TroubleFile = z.infer<typeof trouble>;
