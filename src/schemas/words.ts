/** Kinds of text and days that several files hold. */
import { z } from 'astro/zod';

/** Text somebody can read: spaces alone are none. */
export const text = (least = 1) =>
  z
    .string()
    .refine((s) => s.trim().length >= least, `at least ${least} letter${least === 1 ? '' : 's'}, spaces not counted`);

/** A day that exists, as YYYY-MM-DD. The page builder's own reader hands such a day over as a date. */
export const day = z
  .union([z.string(), z.date()])
  .transform((value) => (typeof value === 'string' ? value : value.toISOString().slice(0, 10)))
  .refine((value) => isDay(value), 'a day that exists, as YYYY-MM-DD, like 2026-03-12')
  .transform((value) => new Date(`${value}T00:00:00Z`));

function isDay(value: string): boolean {
  if (!/^\d{4}-\d\d-\d\d$/.test(value)) return false;
  const date = new Date(`${value}T00:00:00Z`);
  return !Number.isNaN(date.getTime()) && date.toISOString().slice(0, 10) === value;
}
