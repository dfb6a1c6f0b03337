/** parts/: the parts of a kind of machine, as the drawing numbers them, each with the page that is asked for most. File name: the kind of machine. */
import { z } from 'astro/zod';
import { id, pagePath } from './article.ts';
import { inOthers } from './languages.ts';
import { text } from './words.ts';

/** "/guides/cutting-wet/", with or without an anchor. */
const address = z
  .string()
  .regex(/^\/[a-z0-9/-]+\/(?:#[\p{L}\d-]+)?$/u, 'an address of the site, like /guides/cutting-wet/');

export const partList = z.strictObject({
  title: text(5).describe('What the drawing shows.'),
  ...inOthers(z.strictObject({ title: text(5) })),
  parts: z
    .array(
      z.strictObject({
        id: id.describe('The name the drawing has for it.'),
        name: z.string().max(32).pipe(text(3)).describe('What people call it.'),
        see: address.describe('Address of the page about it that is asked for most.'),
        pages: z
          .array(pagePath)
          .default([])
          .describe('Other pages about it, for the page of this drawing: faults, jobs, tables, calculators.'),
        ...inOthers(
          z.strictObject({ name: z.string().max(36).pipe(text(3)), see: address }),
          (language) => `Name and page in ${language}.`,
        ),
      }),
    )
    .min(1)
    .describe('Clockwise from top left.'),
});

export type PartList = z.infer<typeof partList>;
