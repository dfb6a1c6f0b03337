/**
 * The saw on the bench and its ticket. A window keeps its own, so that two windows can be at two saws; a new one starts
 * with what was chosen last.
 */
import { isParts, readRecord, writeRecord, type Kind } from './record.ts';
import { load, ofDevice, ofTicket, putRecord, save, takeOut, textsFrom, ticketKeys, watch } from './store.ts';

export interface Bench {
  /** As the shop numbers them; '' while there is none. */
  readonly ticket: string;
  /** Id of a machine of the site, `own/<id>` for one kept on this device, '' for none: the example. */
  readonly machine: string;
}

const nothing: Bench = { ticket: '', machine: '' };

const benchKind: Kind<Bench> = {
  name: 'bench',
  version: 1,
  read: (data) =>
    isParts(data) && typeof data['ticket'] === 'string' && typeof data['machine'] === 'string'
      ? { ticket: data['ticket'], machine: data['machine'] }
      : undefined,
};

const place = ofDevice(benchKind);
const inWindow = 'almanac-bench';
let chosen: Bench | undefined;

export function bench(): Bench {
  if (chosen) return chosen;
  try {
    const read = readRecord(benchKind, sessionStorage.getItem(inWindow) ?? '');
    if (read.data) return (chosen = read.data);
  } catch {
    // Without it the window starts with the last choice.
  }
  return (chosen = load(place) ?? nothing);
}

/** Which machine belongs to a ticket, so that taking the ticket up again brings its machine. */
const machineKind: Kind<{ readonly machine: string }> = {
  name: 'machine',
  version: 1,
  read: (data) => (isParts(data) && typeof data['machine'] === 'string' ? { machine: data['machine'] } : undefined),
};

/**
 * Puts another saw on the bench, for this window and those opened later.
 * @returns takes it back
 */
export function chooseMachine(machine: string): () => void {
  const before = bench();
  const belongs = ofTicket(machineKind, before.ticket);
  load(belongs);
  save(belongs, { machine });
  put({ ...before, machine });
  return () => void chooseMachine(before.machine);
}

/**
 * Takes up another ticket, with the machine it had. What was begun without a number goes with its first number; a
 * ticket nobody has worked at yet has no machine, because a plate left over from the last saw would fill boxes.
 * @returns takes it back
 */
export function chooseTicket(ticket: string): () => void {
  const before = bench();
  const isNew = textsFrom(ticketKeys(ticket)).length === 0;
  const back = before.ticket === '' && isNew ? moveTicket('', ticket) : () => undefined;
  put({ ticket, machine: load(ofTicket(machineKind, ticket))?.machine ?? '' });
  return () => {
    back();
    put(before);
  };
}

function put(next: Bench): void {
  chosen = next;
  try {
    sessionStorage.setItem(inWindow, writeRecord(benchKind, chosen, Date.now()));
  } catch {
    // It then holds until the page is left.
  }
  load(place);
  save(place, chosen);
}

const watching = new Set<(now: Bench) => void>();

/** Calls back when this window's bench changes. @returns stops it */
export function watchBench(listener: (now: Bench) => void): () => void {
  watching.add(listener);
  const stop = watch(place.key, (_, elsewhere) => {
    if (!elsewhere) listener(bench());
  });
  return () => {
    watching.delete(listener);
    stop();
  };
}

// The window may have gone on to another ticket while a page lay in the browser's memory. Said ahead of what is said
// of the records then (store.ts): which ones are meant hangs on it.
if (typeof window !== 'undefined')
  window.addEventListener(
    'pageshow',
    ({ persisted }) => {
      if (!persisted) return;
      chosen = undefined;
      for (const listener of [...watching]) listener(bench());
    },
    true,
  );

/**
 * Gives the records of one ticket to another: work begun without a number gets one. Records the other ticket already
 * has stay as they are, and so do ours.
 * @returns takes it back, with all that has been written there since
 */
export function moveTicket(from: string, to: string): () => void {
  const there = new Set(textsFrom(ticketKeys(to)).map(([key]) => key));
  give(from, to, new Set());
  return () => give(to, from, there);
}

function give(from: string, to: string, staying: ReadonlySet<string>): void {
  const [here, there] = [ticketKeys(from), ticketKeys(to)];
  const taken = new Set(textsFrom(there).map(([key]) => key));
  const moving = textsFrom(here)
    .map(([key, text]) => [key, there + key.slice(here.length), text] as const)
    .filter(([own, key]) => !staying.has(own) && !taken.has(key));
  for (const [, key, text] of moving) putRecord(key, text);
  takeOut(moving.map(([key]) => key));
}
