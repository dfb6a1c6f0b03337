/** Front matter of every article. One line of explanation per field, for the person who writes it. */
import { z } from 'astro/zod';
import { first, others } from '../words/lang.ts';
import { langCode } from './languages.ts';
import { day, text } from './words.ts';
import { machineKinds } from './machine-kinds.ts';

const id = z
  .string()
  .regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/, 'must be small letters, digits and single hyphens, like wet-cutting');
/** Where another page is: "jobs/drive-belt-change". */
const pagePath = z
  .string()
  .regex(
    /^(?:guides|jobs|tables|explainers|calculators|faults|trouble)\/[a-z0-9-]+$/,
    'must be a folder and a file name without ending, like jobs/drive-belt-change',
  );

const shared = {
  title: z.string().max(70).pipe(text(3)).describe('Page heading and browser title; at most 70 characters.'),
  summary: z.string().max(220).pipe(text(20)).describe('One sentence a reader decides by; shown in lists and search.'),
  reader: z.enum(['customer', 'mechanic']).describe('Who it is written for.'),
  reviewed: day.describe('Day somebody in the shop last went through it, as YYYY-MM-DD.'),
  aliases: z
    .array(text())
    .default([])
    .describe('Other words people search by: part names, unit spellings, slang. Not shown.'),
  hazards: z.array(id).default([]).describe('Cautions shown at the top, by file name in content/hazards.'),
  sources: z.array(id).min(1).describe('What it rests on, by file name in content/sources.'),
  related: z.array(pagePath).default([]).describe('Pages worth reading next.'),
  draft: z
    .boolean()
    .default(false)
    .describe('True while it is being written: `npm run dev` shows it, a build leaves it out.'),
  kinds: z.array(z.enum(machineKinds)).default([]).describe('Kinds of machine it applies to.'),
};

/** One line under the heading, at most 100 characters: what it is for. Without it the summary stands there. */
const line = z
  .string()
  .max(100)
  .pipe(text(10))
  .optional()
  .describe('One line under the heading: what it is for. Without it the summary stands there.');

const lang = langCode
  .default(first)
  .describe(`The language it is written in; ${others.map((code) => `${code} for a file in ${code}/`).join(', ')}.`);

/** Customer care guides. A twin in another language stands in the folder of its name, under the same file name. */
export const guide = z.strictObject({
  ...shared,
  lang,
  order: z
    .number()
    .int()
    .min(1)
    .max(99)
    .default(50)
    .describe('Place in the order of use: before the first cut 1, after the last one last.'),
  line,
  time: text(3).optional().describe('How long it takes, where the guide is something to do: "5 minutes".'),
  tools: z.array(text()).default([]).describe('What the customer needs at hand for it.'),
});

/** Bench work, step by step. */
export const job = z.strictObject({
  ...shared,
  time: text(3).describe('How long it takes someone who has done it before: "45 minutes".'),
  tools: z.array(text()).min(1).describe('What lies ready before the work begins.'),
  parts: z.array(text()).default([]).describe('What is renewed, or may have to be.'),
});

export const table = z.strictObject(shared);
export const explainer = z.strictObject(shared);

/** One page per calculator; the file name is the topic's name in the core. */
export const calculatorPage = z.strictObject({
  ...shared,
  line,
});

/** The shop's own pages, named at the foot: legal notice, privacy, who works here. Twins as with guides. */
export const ownPage = z.strictObject({
  title: shared.title,
  summary: shared.summary,
  lang,
  reviewed: shared.reviewed,
  aliases: shared.aliases,
  draft: shared.draft,
});

export { id, pagePath };
