/** A half-finished search, kept on this device only, so that it can be picked up after the weekend. */
import type { Seen } from '../../core/fault-order/index.ts';

export interface Progress {
  readonly seen: readonly Seen[];
  /** Checks that could not be made; the plan goes on without them. */
  readonly skipped: readonly string[];
}

export const nothingYet: Progress = { seen: [], skipped: [] };

function keyFor(id: string): string {
  return `almanac-fault-${id}`;
}

export function keptProgress(id: string, known: readonly string[]): Progress {
  try {
    const kept = JSON.parse(localStorage.getItem(keyFor(id)) ?? 'null') as Partial<Progress> | null;
    if (!kept || !Array.isArray(kept.seen) || !Array.isArray(kept.skipped)) return nothingYet;
    // A newer edition may have dropped a check; its answer means nothing any more.
    return { seen: kept.seen.filter((s) => known.includes(s.check) && typeof s.shows === 'boolean'), skipped: kept.skipped.filter((s) => known.includes(s)) };
  } catch {
    return nothingYet;
  }
}

export function keepProgress(id: string, progress: Progress): void {
  try {
    if (progress.seen.length + progress.skipped.length === 0) localStorage.removeItem(keyFor(id));
    else localStorage.setItem(keyFor(id), JSON.stringify(progress));
  } catch {
    // Private windows refuse; the search still works while the page is open.
  }
}
