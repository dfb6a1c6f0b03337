/** The packed list, laid out for asking: which phrases hold a family of words, and how rare it is. */
import {
  phraseKinds,
  resultKinds,
  type PackedList,
  type PhraseKind,
  type ResultKind,
} from '../language/packed-list.ts';
import { formsOf, type Tongue } from '../language/forms.ts';
import { kinOf } from '../language/kin.ts';
import { stem } from '../language/stem.ts';

export interface Row {
  readonly address: string;
  readonly title: string;
  readonly kind: ResultKind;
  readonly reader: string;
  /** Number of the page in the full text, and the file its text is in. */
  readonly page: string;
  readonly file: string;
}

export interface Phrase {
  readonly row: number;
  readonly kind: PhraseKind;
  readonly families: readonly string[];
  readonly anchor: string | undefined;
}

export interface List {
  readonly lang: Tongue;
  readonly rows: readonly Row[];
  readonly phrases: readonly Phrase[];
  /** Family -> numbers of the phrases it stands in. */
  readonly standsIn: ReadonlyMap<string, readonly number[]>;
  /** How much a family says: little when many pages have it. */
  readonly weightOf: (family: string) => number;
  /** What all families of a phrase say together. */
  readonly totalOf: (phrase: number) => number;
  /** What a misspelled word may have meant: words of the phrases, and those that mean the same. */
  readonly words: readonly string[];
  /** Forms of words that stand somewhere in the text. */
  readonly inText: ReadonlySet<string>;
  readonly misspelled: Readonly<Record<string, string>>;
  /** The other languages of the site that have a list. */
  readonly beside: readonly Tongue[];
  /** Number in the full text -> row. */
  readonly rowOf: ReadonlyMap<string, number>;
}

export function readList(packed: PackedList, lang: Tongue): List {
  const words = packed.words.split(' ');
  const families = words.map((word) => stem(word, lang));
  const phrases: Phrase[] = [];
  const standsIn = new Map<string, number[]>();
  const pages = new Map<string, { last: number; count: number }>();
  packed.rows.forEach(([, , , , , , list], row) => {
    for (const [kind, numbers, anchor] of list) {
      const own: string[] = [];
      for (const n of numbers) {
        const family = families[n] ?? '';
        if (!own.includes(family)) own.push(family);
      }
      for (const family of own) {
        const at = standsIn.get(family);
        if (at) at.push(phrases.length);
        else standsIn.set(family, [phrases.length]);
        const seen = pages.get(family);
        if (!seen) pages.set(family, { last: row, count: 1 });
        else if (seen.last !== row) pages.set(family, { last: row, count: seen.count + 1 });
      }
      phrases.push({ row, kind: phraseKinds[kind] ?? 'alias', families: own, anchor });
    }
  });
  const weights = new Map<string, number>();
  for (const [family, { count }] of pages) weights.set(family, Math.log(1 + packed.rows.length / count));
  const totals = new Float64Array(phrases.length);
  return {
    lang,
    rows: packed.rows.map(([address, title, kind, reader, page, file]) => ({
      address,
      title,
      kind: resultKinds[kind] ?? 'page',
      reader,
      page,
      file: packed.files[file] ?? '',
    })),
    phrases,
    standsIn,
    weightOf: (family) => weights.get(family) ?? Math.log(1 + packed.rows.length),
    // Worked out when first asked for: most phrases never are.
    totalOf: (phrase) => {
      totals[phrase] ||= (phrases[phrase]?.families ?? []).reduce((sum, f) => sum + (weights.get(f) ?? 0), 0);
      return totals[phrase] ?? 0;
    },
    words: [...new Set([...words, ...[...kinOf(lang).keys()].filter((word) => standsIn.has(stem(word, lang)))])],
    inText: new Set([...packed.known.split(' '), ...words.map((word) => formsOf(word, lang))]),
    misspelled: packed.misspelled,
    beside: packed.beside,
    rowOf: new Map(packed.rows.map(([, , , , page], row) => [page, row])),
  };
}
