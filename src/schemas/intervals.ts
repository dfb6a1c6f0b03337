/** intervals: one file per group of machines, one row per thing to do. */
import { z } from 'astro/zod';
import { id } from './article.ts';
import { machineKinds } from './machine-kinds.ts';

const row = z
  .strictObject({
    part: z.string().min(2).describe('What is looked after.'),
    do: z.string().min(5).describe('What is done, verb first.'),
    when: z
      .string()
      .min(3)
      .optional()
      .describe(
        'How often. Give a moment ("before each use") or figures; with both hours and months the first to come counts.',
      ),
    hours: z.number().gt(0, 'more than 0').optional().describe('After so many hours.'),
    months: z.number().gt(0, 'more than 0').optional().describe('After so many months.'),
    dust: z.boolean().default(false).describe('True when dust and slurry shorten it.'),
    source: id.describe('Where the interval is from, by file name in sources/.'),
    see: z
      .string()
      .regex(/^\/[a-z0-9/-]+\/$/, 'must be an address on this site, like /jobs/drive-belt-change/')
      .optional()
      .describe('Page that tells how.'),
  })
  .refine(
    (r) => r.when !== undefined || r.hours !== undefined || r.months !== undefined,
    'needs when, hours or months',
  );

export const schedule = z.strictObject({
  title: z.string().min(5).describe('Heading of the table.'),
  kinds: z.array(z.enum(machineKinds)).min(1).describe('Kinds of machine it holds for.'),
  rows: z.array(row).min(1).describe('Rows stand in the order they fall due.'),
});
