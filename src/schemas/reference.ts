/** Small records that articles use by file name: cautions, sources, words. */
import { z } from 'astro/zod';
import { id } from './article.ts';
import { harms, levelOf, levels, likelihoods } from './caution-level.ts';

const caution = {
  title: z.string().min(3).max(80),
  /** The one order that matters most, said where there is room for one line. */
  first: z.string().min(8).max(60),
  /** What can happen, in one sentence. */
  say: z.string().min(10),
  /** What to do about it, one line each; every don't starts with "Do not". */
  do: z.array(z.string().min(5)).min(1),
  /** The same for whoever uses the saw, where the list above holds orders for the bench. */
  customer: z.array(z.string().min(5)).min(1).optional(),
};

export const hazard = z
  .strictObject({
    /** Signal word in the sense of ANSI Z535; chosen by the two answers below, as `caution-level.ts` has it. */
    level: z.enum(levels),
    /** The worst that can well happen: it kills, leaves lasting harm, hurts and heals, or damages things. */
    harm: z.enum(harms).optional(),
    /** Whether that is to be expected when the order is not followed, or only possible. */
    likelihood: z.enum(likelihoods).optional(),
    ...caution,
    /** The same in Spanish, for what customers read. */
    es: z.strictObject(caution),
    sources: z.array(id).default([]),
  })
  .superRefine(({ level, harm, likelihood }, context) => {
    if (harm === undefined || likelihood === undefined) return;
    const right = levelOf(harm, likelihood);
    if (level !== right)
      context.addIssue({
        code: 'custom',
        path: ['level'],
        message: `${right}, by harm "${harm}" and likelihood "${likelihood}"`,
      });
  });

export const source = z.strictObject({
  /** Author, work, edition. */
  title: z.string().min(5),
  /** Section, table, page. */
  where: z.string().optional(),
  /** How the figure was seen. `memory` puts an "unchecked" mark beside every number that leans on it. */
  how: z.enum(['read', 'quoted', 'memory', 'common-practice', 'arithmetic']),
  quotedBy: z.string().optional(),
  url: z.url().optional(),
  note: z.string().optional(),
});

export const word = z.strictObject({
  term: z.string().min(2),
  /** The plain meaning, one or two sentences. */
  means: z.string().min(10),
  es: z.strictObject({ term: z.string(), means: z.string() }).optional(),
  /** Other words and spellings for the same thing, shown with the entry; search finds it by them. */
  aliases: z.array(z.string()).default([]),
  /** Ways people misspell it. Search understands them; nobody is shown them. */
  misspelled: z.array(z.string()).default([]),
  /** Page that explains it. */
  see: z.string().optional(),
});
