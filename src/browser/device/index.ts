/** What is kept on this device: records that outlive the page, shared by all pages and windows of the site. */
export { bench, chooseMachine, chooseTicket, moveTicket, watchBench, type Bench } from './bench.ts';
export { quoteKind, type KeptQuote } from './quote.ts';
export { merge } from './merge.ts';
export { isParts, readRecord, writeRecord, type Kind } from './record.ts';
export {
  countOnSheet,
  emptyHead,
  entriesOf,
  entryKind,
  headKind,
  headOf,
  openTickets,
  putOnSheet,
  saveHead,
  type Entry,
  type EntryLine,
  type KeptEntry,
  type NewEntry,
  type SheetHead,
} from './sheet.ts';
export {
  changedAt,
  deviceState,
  dismiss,
  load,
  ofDevice,
  ofTicket,
  putRecord,
  save,
  setAside,
  setAsides,
  takeOut,
  textsFrom,
  ticketKeys,
  watch,
  type Place,
  type Trouble,
} from './store.ts';
export {
  cutChecks,
  draftKind,
  dropCutChecks,
  keepCutCheck,
  type Answer,
  type CutCheck,
  type Draft,
} from './cut-check.ts';
export { ticksKind, type Ticks } from './ticks.ts';
export type { Health } from './storage.ts';
