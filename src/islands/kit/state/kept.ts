/**
 * Figures kept on the device, by calculator and ticket: over a reload, the way back, a closed lid and a new edition.
 * The example's figures are never kept: they would come back as if they meant something.
 */
import { bench, isParts, load, ofTicket, save, type Kind, type Place } from '../../../browser/device/index.ts';
import { isRows, type Entries, type Entry, type From, type Held, type Of } from '../../../core/contract/entry.ts';
import type { IslandProps } from './props.ts';

export interface Kept {
  /** True while the boxes show what the page starts with; there is then nothing to bring back. */
  readonly untouched: boolean;
  readonly entries: Entries;
}

const origins: readonly From[] = ['page', 'usual', 'plate', 'carried', 'own'];

const figuresKind: Kind<Kept> = {
  name: 'figures',
  version: 1,
  read: (data) =>
    isParts(data) && isParts(data['entries'])
      ? { untouched: data['untouched'] === true, entries: entriesOf(data['entries']) }
      : undefined,
};

/** Where the figures of a form lie. The short form of an article has its own, beside the full one's. */
export function placeOf(page: IslandProps): Place<Kept> {
  return ofTicket(figuresKind, bench().ticket, page.compact ? `${page.id} ${location.pathname}` : page.id);
}

export function keptIn(place: Place<Kept>): Kept | undefined {
  return load(place);
}

export function keep(place: Place<Kept>, entries: Entries, untouched: boolean): void {
  // Read first, so that what another window wrote in the meantime is merged and not written over.
  save(place, { untouched, entries: untouched ? {} : worthKeeping(entries) });
}

function worthKeeping(entries: Entries): Entries {
  const lasting = (e: Entry) => e.from !== 'example';
  return Object.fromEntries(
    Object.entries(entries).flatMap(([key, held]): readonly (readonly [string, Held])[] => {
      if (!isRows(held)) return lasting(held) ? [[key, held]] : [];
      if (held.length > 0 && !held.some((row) => Object.values(row).some(lasting))) return [];
      return [[key, held.map((row) => Object.fromEntries(Object.entries(row).filter(([, e]) => lasting(e))))]];
    }),
  );
}

/** Entries as they were read from the device; what is none is left out. */
function entriesOf(parts: Readonly<Record<string, unknown>>): Entries {
  return Object.fromEntries(
    Object.entries(parts).flatMap(([key, held]): readonly (readonly [string, Held])[] => {
      if (Array.isArray(held)) return [[key, held.map((row) => (isParts(row) ? rowOf(row) : {}))]];
      const entry = entryOf(held);
      return entry ? [[key, entry]] : [];
    }),
  );
}

function rowOf(parts: Readonly<Record<string, unknown>>): Readonly<Record<string, Entry>> {
  return Object.fromEntries(
    Object.entries(parts).flatMap(([key, cell]) => {
      const entry = entryOf(cell);
      return entry ? [[key, entry] as const] : [];
    }),
  );
}

function entryOf(part: unknown): Entry | undefined {
  if (!isParts(part) || typeof part['text'] !== 'string') return undefined;
  const from = origins.find((o) => o === part['from']);
  if (!from) return undefined;
  const of = isParts(part['of']) ? (part['of'] as Of) : undefined;
  return { text: part['text'], from, unitIn: part['unitIn'] === 'inch' ? 'inch' : 'metric', ...(of ? { of } : {}) };
}
