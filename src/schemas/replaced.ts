/**
 * replaced.yaml in a shop's folder, written by "npm run replace": for each page that stands in for one of the knowledge,
 * the mark of the original as it was when somebody last compared the two.
 */
import { z } from 'astro/zod';

export const replacedFile = 'replaced.yaml';

/** "jobs/drive-belt-change.mdx": sixteen hexadecimal digits. */
export const replaced = z.record(z.string(), z.string().regex(/^[0-9a-f]{16}$/));

export type Replaced = z.infer<typeof replaced>;
