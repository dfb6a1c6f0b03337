/**
 * The job sheet of a ticket: one record for its head, one for each entry, so that two windows add to one sheet without
 * a question. An entry is a copy; it does not change when the page it came from does.
 */
import { bench } from './bench.ts';
import { isParts, readRecord, type Kind } from './record.ts';
import { load, ofTicket, save, textsFrom, ticketKeys, type Place } from './store.ts';

export interface SheetHead {
  /** As the shop writes it: "MP-350 no. 3". */
  readonly machine: string;
  readonly customer: string;
  /** YYYY-MM-DD, as the other days here. */
  readonly takenIn: string;
  readonly takenBy: string;
  readonly complaint: string;
  readonly notes: string;
  readonly repairedBy: string;
  readonly hours: string;
  readonly handedBack: string;
  /** Checks before the machine goes back, by key: true good, false not. */
  readonly checks: Readonly<Record<string, boolean>>;
}

export const emptyHead: SheetHead = {
  machine: '',
  customer: '',
  takenIn: '',
  takenBy: '',
  complaint: '',
  notes: '',
  repairedBy: '',
  hours: '',
  handedBack: '',
  checks: {},
};

export interface EntryLine {
  readonly label: string;
  readonly text: string;
  /** Where the figure comes from: "yours", "from the plate". */
  readonly from?: string;
}

export interface Entry {
  readonly kind: 'result' | 'check' | 'note' | 'part';
  /** When it was put on the sheet [ms since 1970]. */
  readonly at: number;
  readonly title: string;
  /** What came of it, in one sentence. */
  readonly sentence: string;
  /** What went in, as typed. */
  readonly inputs: readonly EntryLine[];
  /** Further outcomes worth a line. */
  readonly outcomes: readonly EntryLine[];
  /** Page of the site with these figures, from the root: /calculators/belt-tension/?f.centre=270+mm. */
  readonly link: string;
  /** Edition of the site the sum was done with. */
  readonly edition: string;
}

const text = (from: Readonly<Record<string, unknown>>, key: string): string =>
  typeof from[key] === 'string' ? from[key] : '';

const lines = (value: unknown): EntryLine[] =>
  Array.isArray(value)
    ? value.filter(isParts).map((line) => ({
        label: text(line, 'label'),
        text: text(line, 'text'),
        ...(text(line, 'from') ? { from: text(line, 'from') } : {}),
      }))
    : [];

export const headKind: Kind<SheetHead> = {
  name: 'sheet',
  version: 1,
  precious: true,
  read: (data) => {
    if (!isParts(data)) return undefined;
    const checks = isParts(data['checks']) ? Object.entries(data['checks']) : [];
    return {
      ...(Object.fromEntries(Object.keys(emptyHead).map((key) => [key, text(data, key)])) as unknown as SheetHead),
      checks: Object.fromEntries(checks.filter((c): c is [string, boolean] => typeof c[1] === 'boolean')),
    };
  },
};

export const entryKind: Kind<Entry> = {
  name: 'entry',
  version: 1,
  precious: true,
  read: (data) => {
    if (!isParts(data) || typeof data['at'] !== 'number') return undefined;
    const kind = data['kind'];
    if (kind !== 'result' && kind !== 'check' && kind !== 'note' && kind !== 'part') return undefined;
    return {
      kind,
      at: data['at'],
      title: text(data, 'title'),
      sentence: text(data, 'sentence'),
      inputs: lines(data['inputs']),
      outcomes: lines(data['outcomes']),
      link: text(data, 'link'),
      edition: text(data, 'edition'),
    };
  },
};

export interface KeptEntry extends Entry {
  readonly key: string;
}

/** The entries of a ticket, in the order of time. What cannot be read is left out here; loading it tells why. */
export function entriesOf(ticket: string): readonly KeptEntry[] {
  return textsFrom(ticketKeys(ticket, entryKind.name))
    .flatMap(([key, kept]) => {
      const { data } = readRecord(entryKind, kept);
      return data ? [{ ...data, key }] : [];
    })
    .sort((a, b) => a.at - b.at);
}

/** Kinds of record that stand on a sheet with a heading of their own. */
const onSheet = [entryKind.name, 'search', 'quote'];

/** How many things stand on the sheet of a ticket. */
export function countOnSheet(ticket: string): number {
  return onSheet.reduce((sum, kind) => sum + textsFrom(ticketKeys(ticket, kind)).length, 0);
}

/** Tickets with something on their sheet, or a head that was filled in; last touched first. */
export function openTickets(): readonly string[] {
  const last = new Map<string, number>();
  for (const [key, kept] of textsFrom(ticketKeys())) {
    const [, , ticket = '', kind = ''] = key.split('/').map(decodeURIComponent);
    if (kind !== headKind.name && !onSheet.includes(kind)) continue;
    const at = /"at":(\d+)/.exec(kept)?.[1];
    last.set(ticket, Math.max(last.get(ticket) ?? 0, Number(at ?? 0)));
  }
  return [...last].sort((a, b) => b[1] - a[1]).map(([ticket]) => ticket);
}

export type NewEntry = Pick<Entry, 'kind' | 'title'> & Partial<Entry>;

/**
 * Puts a copy of an answer, a note or a part on the sheet of the ticket on the bench. The same answer pressed twice
 * stands there once.
 * @returns where it lies
 */
export function putOnSheet(entry: NewEntry, ticket = bench().ticket): Place<Entry> {
  const whole: Entry = {
    sentence: '',
    inputs: [],
    outcomes: [],
    link: '',
    edition: document.documentElement.dataset['edition'] ?? '',
    at: Date.now(),
    ...entry,
  };
  const bare = (e: Entry) => JSON.stringify([e.kind, e.title, e.sentence, e.inputs, e.outcomes, e.link]);
  const there = entry.kind === 'result' ? entriesOf(ticket).find((e) => bare(e) === bare(whole)) : undefined;
  const name = `${whole.at}-${Math.random().toString(36).slice(2, 8)}`;
  const place = there ? { key: there.key, kind: entryKind } : ofTicket(entryKind, ticket, name);
  if (!there) save(place, whole);
  return place;
}

export function headOf(ticket: string): SheetHead {
  return load(ofTicket(headKind, ticket)) ?? emptyHead;
}

export function saveHead(ticket: string, head: SheetHead): void {
  save(ofTicket(headKind, ticket), head);
}
