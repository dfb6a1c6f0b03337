/** Small records that articles use by file name: cautions, sources, words. */
import { z } from 'astro/zod';
import { id } from './article.ts';
import { inOthers } from './languages.ts';
import { harms, levelOf, levels, likelihoods } from './caution-level.ts';

const caution = {
  title: z.string().min(3).max(80).describe('What hurts, in a few words.'),
  first: z.string().min(8).max(60).describe('The one order that matters most, said where there is room for one line.'),
  say: z.string().min(10).describe('What can happen, in one sentence.'),
  do: z
    .array(z.string().min(5))
    .min(1)
    .describe('What to do about it, one line each; every don\'t starts with "Do not".'),
  customer: z
    .array(z.string().min(5))
    .min(1)
    .optional()
    .describe('The same for whoever uses the saw, where the list above holds orders for the bench.'),
};

export const hazard = z
  .strictObject({
    level: z
      .enum(levels)
      .describe(
        'Signal word in the sense of ANSI Z535; chosen by the two answers below, as `caution-level.ts` has it.',
      ),
    harm: z
      .enum(harms)
      .optional()
      .describe('The worst that can well happen: it kills, leaves lasting harm, hurts and heals, or damages things.'),
    likelihood: z
      .enum(likelihoods)
      .optional()
      .describe('Whether that is to be expected when the order is not followed, or only possible.'),
    ...caution,
    ...inOthers(z.strictObject(caution), (language) => `The same in ${language}, for what customers read.`),
    sources: z.array(id).default([]).describe('What it rests on, by file name in sources/.'),
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
  title: z.string().min(5).describe('Author, work, edition.'),
  where: z.string().optional().describe('Section, table, page.'),
  how: z
    .enum(['read', 'quoted', 'memory', 'common-practice', 'arithmetic'])
    .describe('How the figure was seen. `memory` puts an "unchecked" mark beside every number that leans on it.'),
  quotedBy: z.string().optional().describe('Where it was seen quoted, when the work itself was not.'),
  url: z.url().optional().describe('Where it can be read.'),
  note: z.string().optional().describe('What whoever leans on it should know.'),
  ...inOthers(
    z.strictObject({ title: z.string().min(5).optional(), where: z.string().optional() }),
    (language) =>
      `For ${language} pages: the title where it is our own words and no name of a work, and the place in ${language}.`,
  ),
});

export const word = z.strictObject({
  term: z.string().min(2).describe('The word.'),
  means: z.string().min(10).describe('The plain meaning, one or two sentences.'),
  ...inOthers(
    z.strictObject({ term: z.string(), means: z.string() }),
    (language) => `Word and meaning in ${language}.`,
  ),
  aliases: z
    .array(z.string())
    .default([])
    .describe('Other words and spellings for the same thing, shown with the entry; search finds it by them.'),
  misspelled: z
    .array(z.string())
    .default([])
    .describe('Ways people misspell it. Search understands them; nobody is shown them.'),
  see: z.string().optional().describe('Page that explains it.'),
});
