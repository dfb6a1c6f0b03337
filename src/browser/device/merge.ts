/** Two changes of one record, brought together. */
import { isParts } from './record.ts';

export interface Merged {
  readonly data: unknown;
  /** Parts that both changed, each in another way; there the data holds `mine`. */
  readonly conflicts: readonly string[];
}

const same = (a: unknown, b: unknown): boolean => a === b || JSON.stringify(a) === JSON.stringify(b);

/**
 * Three-way merge: a part changed on one side only is taken from that side. Objects are merged part by part, anything
 * else is one piece.
 * @param base what both started from; nothing when this page never saw it
 */
export function merge(base: unknown, mine: unknown, theirs: unknown, path = ''): Merged {
  if (same(mine, theirs) || same(theirs, base)) return { data: mine, conflicts: [] };
  if (same(mine, base)) return { data: theirs, conflicts: [] };
  if (!isParts(mine) || !isParts(theirs)) return { data: mine, conflicts: [path] };
  const from = isParts(base) ? base : {};
  const data: Record<string, unknown> = {};
  const conflicts: string[] = [];
  for (const key of new Set([...Object.keys(theirs), ...Object.keys(mine)])) {
    const part = merge(from[key], mine[key], theirs[key], path ? `${path}.${key}` : key);
    if (part.data !== undefined) data[key] = part.data;
    conflicts.push(...part.conflicts);
  }
  return { data, conflicts };
}
