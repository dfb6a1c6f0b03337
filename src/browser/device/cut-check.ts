/** Checks made before a cut: the one under way, by list, and the dated records of those ended. */
import { isParts, readRecord, type Kind } from './record.ts';
import { load, ofDevice, save, takeOut, textsFrom } from './store.ts';

export interface Answer {
  readonly said: 'yes' | 'no' | 'not-here';
  /** Why it does not apply; '' otherwise. */
  readonly why: string;
}

export interface Draft {
  readonly saw: string;
  readonly who: string;
  readonly answers: Readonly<Record<string, Answer>>;
}

export interface CutCheck extends Draft {
  /** File name of the list in content/knowledge/checks. */
  readonly list: string;
  /** When it ended [ms since 1970]. */
  readonly at: number;
}

const saidWords: readonly string[] = ['yes', 'no', 'not-here'];

function readDraft(data: unknown): Draft | undefined {
  if (!isParts(data) || typeof data['saw'] !== 'string' || typeof data['who'] !== 'string') return undefined;
  if (!isParts(data['answers'])) return undefined;
  const answers = Object.entries(data['answers']).filter(
    (a): a is [string, Answer] =>
      isParts(a[1]) && typeof a[1]['why'] === 'string' && saidWords.includes(a[1]['said'] as string),
  );
  return { saw: data['saw'], who: data['who'], answers: Object.fromEntries(answers) };
}

export const draftKind: Kind<Draft> = { name: 'cut-check-now', version: 1, read: readDraft };

const endedKind: Kind<CutCheck> = {
  name: 'cut-check',
  version: 1,
  read: (data) => {
    const draft = readDraft(data);
    if (!draft || !isParts(data) || typeof data['list'] !== 'string' || typeof data['at'] !== 'number')
      return undefined;
    return { ...draft, list: data['list'], at: data['at'] };
  },
};

const nameOf = (one: CutCheck): string => `${one.list} ${one.at}`;
const all = ofDevice(endedKind).key;

/** @returns true when it can be read back */
export function keepCutCheck(one: CutCheck): boolean {
  const place = ofDevice(endedKind, nameOf(one));
  save(place, one);
  return load(place) !== undefined;
}

/** The records of a list, the latest first. */
export function cutChecks(list: string): readonly CutCheck[] {
  return textsFrom(all)
    .map(([, text]) => readRecord(endedKind, text).data)
    .filter((one): one is CutCheck => one?.list === list)
    .sort((a, b) => b.at - a.at);
}

/** Takes the records of a list out. @returns puts them back */
export function dropCutChecks(list: string): () => void {
  return takeOut(cutChecks(list).map((one) => ofDevice(endedKind, nameOf(one)).key));
}
