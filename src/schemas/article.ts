/** Front matter of every article. One line of explanation per field, for the person who writes it. */
import { z } from 'astro/zod';
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
  /** Page heading and browser title; at most 70 characters. */
  title: z.string().max(70).pipe(text(3)),
  /** One sentence a reader decides by; shown in lists and search. */
  summary: z.string().max(220).pipe(text(20)),
  /** Who it is written for. */
  reader: z.enum(['customer', 'mechanic']),
  /** Day somebody in the shop last went through it, as YYYY-MM-DD. */
  reviewed: day,
  /** Other words people search by: part names, unit spellings, slang. Not shown. */
  aliases: z.array(text()).default([]),
  /** Cautions shown at the top, by file name in content/hazards. */
  hazards: z.array(id).default([]),
  /** What it rests on, by file name in content/sources. */
  sources: z.array(id).min(1),
  /** Pages worth reading next. */
  related: z.array(pagePath).default([]),
  /** True while it is being written: `npm run dev` shows it, a build leaves it out. */
  draft: z.boolean().default(false),
  /** Kinds of machine it applies to. */
  kinds: z.array(z.enum(machineKinds)).default([]),
};

/** One line under the heading, at most 100 characters: what it is for. Without it the summary stands there. */
const line = z.string().max(100).pipe(text(10)).optional();

/** Customer care guides. A Spanish twin stands in guides/es/ under the same file name. */
export const guide = z.strictObject({
  ...shared,
  lang: z.enum(['en', 'es']).default('en'),
  /** Place in the order of use: before the first cut 1, after the last one last. */
  order: z.number().int().min(1).max(99).default(50),
  line,
  /** How long it takes, where the guide is something to do: "5 minutes". */
  time: text(3).optional(),
  /** What the customer needs at hand for it. */
  tools: z.array(text()).default([]),
});

/** Bench work, step by step. */
export const job = z.strictObject({
  ...shared,
  /** How long it takes someone who has done it before: "45 minutes". */
  time: text(3),
  tools: z.array(text()).min(1),
  parts: z.array(text()).default([]),
});

export const table = z.strictObject(shared);
export const explainer = z.strictObject(shared);

/** One page per calculator; the file name is the topic's name in the core. */
export const calculatorPage = z.strictObject({
  ...shared,
  line,
});

/** The shop's own pages, named at the foot: legal notice, privacy, who works here. Twins in pages/es/ under the same name. */
export const ownPage = z.strictObject({
  title: shared.title,
  summary: shared.summary,
  lang: z.enum(['en', 'es']).default('en'),
  reviewed: day,
  aliases: shared.aliases,
  draft: shared.draft,
});

export { id, pagePath };
