/**
 * Records kept on this device, shared by all pages and windows of the site. A record that cannot be read is set aside
 * and never written over; two windows that changed one record are brought together part by part, and what cannot be
 * brought together is asked about.
 */
import { merge } from './merge.ts';
import { readRecord, writeRecord, type Kind } from './record.ts';
import { dropText, getText, healthNow, heldKeys, keysFrom, putText, type Health } from './storage.ts';

/** Where a record lies and what it must be. */
export interface Place<T> {
  readonly key: string;
  readonly kind: Kind<T>;
}

const top = 'almanac/';
const asideTop = 'almanac-aside/';

const keyOf = (...parts: readonly string[]): string => top + parts.map(encodeURIComponent).join('/');

/** A record of a ticket. Work without a number yet belongs to the ticket ''. */
export function ofTicket<T>(kind: Kind<T>, ticket: string, name = ''): Place<T> {
  return { kind, key: keyOf('ticket', ticket, kind.name, name) };
}

/** A record of the device: its own saws, say. */
export function ofDevice<T>(kind: Kind<T>, name = ''): Place<T> {
  return { kind, key: keyOf('device', kind.name, name) };
}

/** Begins every key of a ticket, or of one kind of record of it. */
export function ticketKeys(ticket?: string, kind?: string): string {
  return ['ticket', ticket, kind]
    .filter((part) => part !== undefined)
    .reduce((key, part) => `${key}${encodeURIComponent(part)}/`, top);
}

export type Trouble =
  | { readonly what: 'corrupt' | 'newer'; readonly key: string }
  | {
      readonly what: 'conflict';
      readonly key: string;
      readonly parts: readonly string[];
      readonly mine: unknown;
      readonly theirs: unknown;
      /** What is not kept is set aside. */
      readonly settle: (keep: 'mine' | 'theirs') => void;
    };

type Listener = (key: string, elsewhere: boolean) => void;

const listeners = new Set<Listener>();
let troubles: readonly Trouble[] = [];
/** What this page last saw of each record, as text: the base of a merge. */
const seen = new Map<string, string>();

function tell(key: string, elsewhere = false): void {
  for (const listener of [...listeners]) listener(key, elsewhere);
}

function trouble(next: Trouble): void {
  if (troubles.some((t) => t.key === next.key && t.what === next.what)) return;
  troubles = [...troubles, next];
  tell('');
}

/** How the storage is, and what needs the reader's word. */
export function deviceState(): { readonly health: Health; readonly troubles: readonly Trouble[] } {
  return { health: healthNow(), troubles };
}

export function dismiss(one: Trouble): void {
  troubles = troubles.filter((t) => t !== one);
  tell('');
}

let asides = 0;

const asideKey = (key: string): string => `${asideTop}${Date.now()}.${(asides += 1)}/${key}`;

/** Copies a text to a key of its own; `false` when the device does not take it. */
export function setAside(key: string, text: string): boolean {
  const aside = asideKey(key);
  if (putText(aside, text)) return true;
  dropText(aside);
  return false;
}

/** By key, what could not be kept because the unreadable text in its place could not be set aside. */
const stuck = new Map<string, unknown>();

/** By key, what this page would keep while the reader is asked, and the way to change it. */
const waiting = new Map<string, { readonly mine: () => unknown; readonly hold: (mine: unknown) => void }>();

export function load<T>(place: Place<T>): T | undefined {
  if (stuck.has(place.key)) return stuck.get(place.key) as T;
  // Until there is an answer the page goes on with its own: the other's in its boxes would be written over that.
  const question = waiting.get(place.key);
  if (question) return question.mine() as T;
  const text = getText(place.key);
  if (text === undefined) {
    seen.delete(place.key);
    return undefined;
  }
  const read = readRecord(place.kind, text);
  if (read.bad === undefined) {
    seen.set(place.key, text);
    return read.data;
  }
  if (read.bad === 'corrupt' && setAside(place.key, text)) dropText(place.key);
  trouble({ what: read.bad, key: place.key });
  return undefined;
}

/** When a record was last changed [ms since 1970]; 0 when there is none. */
export function changedAt<T>(place: Place<T>): number {
  return readRecord(place.kind, getText(place.key) ?? '').at ?? 0;
}

export function save<T>(place: Place<T>, data: T): void {
  const question = waiting.get(place.key);
  if (question) return question.hold(data);
  const stored = getText(place.key);
  const base = seen.get(place.key);
  if (stored === undefined || stored === base) return write(place, data);
  const theirs = readRecord(place.kind, stored);
  if (theirs.bad !== undefined) {
    if (!setAside(place.key, stored)) {
      stuck.set(place.key, data);
      return trouble({ what: theirs.bad, key: place.key });
    }
    stuck.delete(place.key);
    return write(place, data);
  }
  const was = base === undefined ? undefined : readRecord(place.kind, base).data;
  const merged = merge(was, data, theirs.data);
  const asked = merged.conflicts.filter((part) => !place.kind.derived?.includes(part));
  if (asked.length === 0) write(place, merged.data as T);
  else ask(place, was, data, theirs.data, asked);
}

/** Whatever the answer, and also without one, both changes stay on the device. */
function ask<T>(place: Place<T>, was: T | undefined, first: T, theirs: T, parts: readonly string[]): void {
  let mine: unknown = first;
  const aside = asideKey(place.key);
  const keepMine = (data: unknown) => {
    mine = data;
    putText(aside, writeRecord(place.kind, data, Date.now()));
  };
  keepMine(first);
  waiting.set(place.key, { mine: () => mine, hold: keepMine });
  const asked: Trouble = {
    what: 'conflict',
    key: place.key,
    parts,
    mine,
    theirs,
    settle: (keep) => {
      waiting.delete(place.key);
      const stored = getText(place.key);
      const now = stored === undefined ? undefined : readRecord(place.kind, stored).data;
      if (keep === 'mine') {
        if (stored !== undefined) putText(aside, stored);
        write(place, merge(was, mine, now).data as T);
      }
      dismiss(asked);
      // Part of what now lies there was written elsewhere.
      tell(place.key, true);
    },
  };
  trouble(asked);
}

function write<T>(place: Place<T>, data: T): void {
  const was = healthNow();
  const text = writeRecord(place.kind, data, Date.now());
  seen.set(place.key, text);
  if (!putText(place.key, text) && place.kind.precious) window.addEventListener('beforeunload', askBeforeLeaving);
  if (was !== healthNow()) tell('');
  tell(place.key);
}

/** What could not be kept would go with the page; the browser asks in its own words. */
function askBeforeLeaving(event: Event): void {
  if (heldKeys().length > 0) event.preventDefault();
}

/** Takes records out. @returns puts them back as they were; what was written in their place since is set aside */
export function takeOut(keys: readonly string[]): () => void {
  const texts = keys.map((key) => [key, getText(key)] as const);
  for (const key of keys) {
    dropText(key);
    seen.delete(key);
    tell(key);
  }
  return () => {
    for (const [key, text] of texts) {
      const since = getText(key);
      const free = since === undefined || since === text || setAside(key, since);
      if (text !== undefined && free) putRecord(key, text);
    }
  };
}

/** Keys that begin so, each with the text of its record. */
export function textsFrom(prefix: string): readonly (readonly [key: string, text: string])[] {
  return keysFrom(prefix).map((key) => [key, getText(key) ?? ''] as const);
}

/** Puts a record under a key as it was written elsewhere: another ticket, or a file. */
export function putRecord(key: string, text: string): void {
  seen.delete(key);
  putText(key, text);
  tell(key);
}

/** What was set aside, oldest first. */
export function setAsides(): readonly { readonly aside: string; readonly key: string; readonly at: number }[] {
  return keysFrom(asideTop).map((aside) => {
    const [, time = '', key = ''] = /^[^/]*\/(\d+)[^/]*\/(.*)$/s.exec(aside) ?? [];
    return { aside, key, at: Number(time) };
  });
}

/**
 * Calls back when a record whose key begins so changes, here or in another window, and with the key '' when the
 * state of the storage does.
 * @returns stops it
 */
export function watch(prefix: string, listener: Listener): () => void {
  const mine: Listener = (key, elsewhere) => {
    if (key === '' || key.startsWith(prefix) || prefix.startsWith(key)) listener(key, elsewhere);
  };
  listeners.add(mine);
  return () => listeners.delete(mine);
}

if (typeof window !== 'undefined') {
  window.addEventListener('storage', ({ key }) => tell(key ?? top, true));
  // A page taken back out of the browser's memory heard nothing in the meantime.
  window.addEventListener('pageshow', ({ persisted }) => {
    if (persisted) tell(top, true);
  });
}
