/** trouble/: a complaint as whoever uses the saw has it. One file for all languages; its pages say what to look at, what to leave alone and when to bring it in. */
import { z } from 'astro/zod';
import { id } from './article.ts';
import { inOthers } from './languages.ts';
import { machineKinds } from './machine-kinds.ts';
import { day, text } from './words.ts';

/** One line of a list; **bold** for the words that carry it. */
const lines = z.array(z.string().max(170).pipe(text(10))).min(1);

const said = {
  title: z.string().max(60).pipe(text(5)).describe('As the customer would say it.'),
  line: z.string().max(120).pipe(text(10)).describe('One line under the heading.'),
  look: lines.max(4).describe('What may be looked at without tools, in order.'),
  leave: lines.max(4).describe('What not to do and not to open; every line starts with "Do not".'),
  bring: lines.max(4).describe('When to stop and bring it in.'),
  aliases: z.array(text()).default([]).describe('Other words people search by. Not shown.'),
};

export const trouble = z.strictObject({
  ...said,
  ...inOthers(z.strictObject(said)),
  hazard: id.describe('The one caution at the top, by file name in hazards/.'),
  order: z.number().int().min(1).max(99).describe('Place in the list of complaints, 1 first.'),
  kinds: z.array(z.enum(machineKinds)).min(1).describe('Kinds of machine it applies to.'),
  reviewed: day.describe('Day somebody in the shop last went through it, as YYYY-MM-DD.'),
  related: z
    .array(z.string().regex(/^(?:faults|guides|jobs)\/[a-z0-9-]+$/))
    .default([])
    .describe('The same complaint at the bench, by page.'),
  sources: z.array(id).min(1).describe('What it rests on, by file name in sources/.'),
});

export type TroubleFile = z.infer<typeof trouble>;
