/** intervals: one file per group of machines, one row per thing to do. */
import { z } from 'astro/zod';
import { id } from './article.ts';
import { machineKinds } from './machine-kinds.ts';

const row = z
  .strictObject({
    part: z.string().min(2),
    /** What is done, verb first. */
    do: z.string().min(5),
    /** How often. Give a moment ("before each use") or figures; with both hours and months the first to come counts. */
    when: z.string().min(3).optional(),
    hours: z.number().gt(0, 'more than 0').optional(),
    months: z.number().gt(0, 'more than 0').optional(),
    /** True when dust and slurry shorten it. */
    dust: z.boolean().default(false),
    source: id,
    /** Page that tells how. */
    see: z
      .string()
      .regex(/^\/[a-z0-9/-]+\/$/, 'must be an address on this site, like /jobs/drive-belt-change/')
      .optional(),
  })
  .refine(
    (r) => r.when !== undefined || r.hours !== undefined || r.months !== undefined,
    'needs when, hours or months',
  );

export const schedule = z.strictObject({
  title: z.string().min(5),
  /** Kinds of machine it holds for. */
  kinds: z.array(z.enum(machineKinds)).min(1),
  /** Rows stand in the order they fall due. */
  rows: z.array(row).min(1),
});
