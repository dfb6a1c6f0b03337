/** parts/: the parts of a kind of machine, as the drawing numbers them, each with the page that is asked for most. File name: the kind of machine. */
import { z } from 'astro/zod';
import { id, pagePath } from './article.ts';
import { text } from './words.ts';

/** "/guides/cutting-wet/", with or without an anchor. */
const address = z
  .string()
  .regex(/^\/[a-z0-9/-]+\/(?:#[\p{L}\d-]+)?$/u, 'an address of the site, like /guides/cutting-wet/');

export const partList = z.strictObject({
  /** What the drawing shows. */
  title: text(5),
  es: z.strictObject({ title: text(5) }),
  /** Clockwise from top left. */
  parts: z
    .array(
      z.strictObject({
        id,
        name: z.string().max(32).pipe(text(3)),
        see: address,
        /** Other pages about it, for the page of this drawing: faults, jobs, tables, calculators. */
        pages: z.array(pagePath).default([]),
        es: z.strictObject({ name: z.string().max(36).pipe(text(3)), see: address }),
      }),
    )
    .min(1),
});

export type PartList = z.infer<typeof partList>;
