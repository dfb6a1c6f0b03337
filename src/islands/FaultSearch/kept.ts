/** A half-finished search, kept on this device only, so that it can be picked up after the weekend. */
import type { Seen } from '../../core/topics/fault-order/index.ts';

export interface Progress {
  readonly seen: readonly Seen[];
  /** Checks that could not be made; the plan goes on without them. */
  readonly skipped: readonly string[];
  /** Which machine or ticket the search is about, as typed. */
  readonly machine: string;
  /** Day of the first answer, YYYY-MM-DD; empty before it. */
  readonly begun: string;
}

export const nothingYet: Progress = { seen: [], skipped: [], machine: '', begun: '' };

function keyFor(id: string): string {
  return `almanac-fault-${id}`;
}

export function keptProgress(id: string, known: readonly string[]): Progress {
  try {
    const kept = JSON.parse(localStorage.getItem(keyFor(id)) ?? 'null') as Partial<Progress> | null;
    if (!kept || !Array.isArray(kept.seen) || !Array.isArray(kept.skipped)) return nothingYet;
    // A newer edition may have dropped a check; its answer means nothing any more.
    return {
      seen: kept.seen.filter((s) => known.includes(s.check) && typeof s.shows === 'boolean'),
      skipped: kept.skipped.filter((s) => known.includes(s)),
      machine: typeof kept.machine === 'string' ? kept.machine : '',
      begun: typeof kept.begun === 'string' ? kept.begun : '',
    };
  } catch {
    return nothingYet;
  }
}

export function keepProgress(id: string, progress: Progress): void {
  try {
    if (progress.seen.length + progress.skipped.length === 0 && progress.machine === '')
      localStorage.removeItem(keyFor(id));
    else localStorage.setItem(keyFor(id), JSON.stringify(progress));
  } catch {
    // Private windows refuse; the search still works while the page is open.
  }
}
