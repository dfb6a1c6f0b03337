/** The sheet of the ticket on the bench, read anew whenever a record of it changes here or in another window. */
import { useEffect, useRef, useState } from 'preact/hooks';
import {
  bench,
  emptyHead,
  entriesOf,
  headOf,
  load,
  ofTicket,
  openTickets,
  quoteKind,
  readRecord,
  saveHead,
  textsFrom,
  ticketKeys,
  watch,
  watchBench,
  type KeptEntry,
  type KeptQuote,
  type SheetHead,
} from '../../browser/device/index.ts';
import { searchKind, type Search } from '../FaultSearch/kept.ts';

export interface KeptSearch extends Search {
  /** File name of the complaint. */
  readonly fault: string;
  readonly key: string;
}

export interface Sheet {
  readonly ticket: string;
  readonly machine: string;
  readonly head: SheetHead;
  readonly entries: readonly KeptEntry[];
  readonly searches: readonly KeptSearch[];
  readonly quote: KeptQuote | undefined;
  readonly others: readonly string[];
}

const nothing: Sheet = {
  ticket: '',
  machine: '',
  head: emptyHead,
  entries: [],
  searches: [],
  quote: undefined,
  others: [],
};

export function useSheet(): {
  readonly live: boolean;
  readonly sheet: Sheet;
  readonly set: (part: Partial<SheetHead>) => void;
} {
  const [live, setLive] = useState(false);
  const [sheet, setSheet] = useState(nothing);
  /** Who fills in forms for others fills several boxes before the page is drawn again. */
  const newest = useRef(sheet);
  const show = (next: Sheet) => {
    newest.current = next;
    setSheet(next);
  };
  useEffect(() => {
    const read = () => show(readSheet());
    read();
    setLive(true);
    const stops = [watchBench(read), watch(ticketKeys(), read)];
    return () => stops.forEach((stop) => stop());
  }, []);
  return {
    live,
    sheet,
    set: (part) => {
      const head = { ...newest.current.head, ...part };
      show({ ...newest.current, head });
      saveHead(newest.current.ticket, head);
    },
  };
}

function readSheet(): Sheet {
  const { ticket, machine } = bench();
  return {
    ticket,
    machine,
    head: headOf(ticket),
    entries: entriesOf(ticket),
    searches: textsFrom(ticketKeys(ticket, searchKind.name)).flatMap(([key, text]) => {
      const { data } = readRecord(searchKind, text);
      return data ? [{ ...data, key, fault: decodeURIComponent(key.split('/').at(-1) ?? '') }] : [];
    }),
    quote: load(ofTicket(quoteKind, ticket)),
    others: openTickets(),
  };
}
