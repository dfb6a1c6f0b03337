/** The packed list, laid out for asking: which phrases hold a family of words, and how rare it is. */
import {
  kindsInANumber,
  phraseKinds,
  resultKinds,
  type PackedList,
  type PhraseKind,
  type ResultKind,
} from '../language/packed-list.ts';
import type { Lang } from '../../words/lang.ts';
import type { Speech } from '../../words/say/speech.ts';
import { formsOf } from '../language/forms.ts';
import { kinOf } from '../language/kin.ts';
import { stem } from '../language/stem.ts';

export interface Row {
  readonly address: string;
  readonly title: string;
  readonly kind: ResultKind;
  readonly reader: string;
  /** Number of the page in its part of the full text, and the file its text is in: "0/en_e59dc23". */
  readonly page: string;
  readonly file: string;
}

export interface Phrase {
  readonly row: number;
  readonly kind: PhraseKind;
  /** How many families it has, each counted once. */
  readonly length: number;
  /** Whether it says that something does not happen. */
  readonly denies: boolean;
  /** What all its families say together. */
  readonly total: number;
  readonly anchor: string | undefined;
}

export interface List {
  readonly lang: Lang;
  /** What is known of the words of its language. */
  readonly speech: Speech;
  readonly rows: readonly Row[];
  readonly phrase: (number: number) => Phrase;
  /** Numbers of the phrases a family stands in. */
  readonly standsIn: (family: string) => Int32Array | undefined;
  /** How much a family says: little when many pages have it. */
  readonly weightOf: (family: string) => number;
  /** What a misspelled word may have meant: words of the phrases, and those that mean the same. */
  readonly words: readonly string[];
  /** Whether forms of a word stand somewhere in the text. */
  readonly inText: (forms: string) => boolean;
  readonly misspelled: Readonly<Record<string, string>>;
  /** The other languages of the site that have a list. */
  readonly beside: readonly Lang[];
  /** The row of a page in the full text, by part and number. */
  readonly rowOf: (part: string, page: string) => number | undefined;
}

export function readList(packed: PackedList, lang: Lang, speech: Speech): List {
  const words = packed.words.split(' ');
  const known = ` ${packed.known} `;
  const forms = new Set(words.map((word) => formsOf(word, speech)));
  const rowOf = new Map(packed.rows.map(([, , , , page, file], row) => [`${partIn(packed.files[file])}/${page}`, row]));
  const { families, ...phrases } = readPhrases(
    packed,
    words.map((word) => stem(word, speech)),
  );
  return {
    lang,
    speech,
    rows: packed.rows.map(([address, title, kind, reader, page, file]) => ({
      address,
      title,
      kind: resultKinds[kind] ?? 'page',
      reader,
      page,
      file: packed.files[file] ?? '',
    })),
    ...phrases,
    words: [...new Set([...words, ...[...kinOf(speech).keys()].filter((word) => families.has(stem(word, speech)))])],
    // Looked for in the text as it came: a question has a few words, and a big site ten thousands.
    inText: (word) => forms.has(word) || known.includes(` ${word} `),
    misspelled: packed.misspelled,
    beside: packed.beside,
    rowOf: (part, page) => rowOf.get(`${part}/${page}`),
  };
}

/** The part of the index a file of it is in: "0" of "0/en_e59dc23". */
const partIn = (file = ''): string => file.slice(0, file.indexOf('/'));

type Phrases = Pick<List, 'phrase' | 'standsIn' | 'weightOf'> & { readonly families: ReadonlyMap<string, number> };

/**
 * The phrases as columns of numbers, which a big site's ten thousands are read into before the first question.
 * @param familyOf by number of a word
 */
function readPhrases({ rows, phrases: packed, anchors }: PackedList, familyOf: readonly string[]): Phrases {
  const families = new Map<string, number>();
  const ids = Int32Array.from(familyOf, (family) => {
    const known = families.get(family) ?? families.size;
    families.set(family, known);
    return known;
  });
  const count = rows.reduce((sum, row) => sum + row[6], 0);
  const [rowAt, kindAt, start] = [new Int32Array(count), new Uint8Array(count), new Int32Array(count + 1)];
  /** Families of the phrases, one after the other; in how many phrases each stands, and on how many pages. */
  const own = new Int32Array(packed.length);
  const [inPhrases, onPages] = [new Int32Array(families.size), new Int32Array(families.size)];
  const lastRow = new Int32Array(families.size).fill(-1);
  const anchorOf = new Map<number, string>();
  let [p, end, at] = [0, 0, 0];
  for (let row = 0; row < rows.length; row += 1)
    for (let left = rows[row]?.[6] ?? 0; left > 0; left -= 1) {
      const head = packed[at] ?? 0;
      const kind = head % kindsInANumber;
      const after = at + 1 + (head - kind) / kindsInANumber;
      const from = end;
      for (at += 1; at < after; at += 1) {
        const family = ids[packed[at] ?? 0] ?? 0;
        if (holds(own, from, end, family)) continue;
        own[end] = family;
        end += 1;
        inPhrases[family] = (inPhrases[family] ?? 0) + 1;
        if (lastRow[family] !== row) onPages[family] = (onPages[family] ?? 0) + 1;
        lastRow[family] = row;
      }
      if (phraseKinds[kind] === 'heading') anchorOf.set(p, anchors[anchorOf.size] ?? '');
      rowAt[p] = row;
      kindAt[p] = kind;
      p += 1;
      start[p] = end;
    }
  const standing = byFamily(start, own, inPhrases);
  const weights = Float64Array.from(onPages, (pages) => Math.log(1 + rows.length / pages));
  const totals = new Float64Array(count);
  for (let n = 0; n < count; n += 1)
    for (let of = start[n] ?? 0; of < (start[n + 1] ?? 0); of += 1)
      totals[n] = (totals[n] ?? 0) + (weights[own[of] ?? 0] ?? 0);
  const no = families.get('no') ?? -1;
  return {
    families,
    phrase: (n) => {
      const [from, to] = [start[n] ?? 0, start[n + 1] ?? 0];
      return {
        row: rowAt[n] ?? 0,
        kind: phraseKinds[kindAt[n] ?? 0] ?? 'alias',
        length: to - from,
        denies: holds(own, from, to, no),
        total: totals[n] ?? 0,
        anchor: anchorOf.get(n),
      };
    },
    standsIn: (family) => {
      const id = families.get(family);
      return id === undefined ? undefined : standing(id);
    },
    weightOf: (family) => weights[families.get(family) ?? -1] ?? Math.log(1 + rows.length),
  };
}

function holds(list: Int32Array, from: number, to: number, wanted: number): boolean {
  for (let at = from; at < to; at += 1) if (list[at] === wanted) return true;
  return false;
}

/** Family -> the phrases it stands in, in their order. */
function byFamily(start: Int32Array, own: Int32Array, inPhrases: Int32Array): (family: number) => Int32Array {
  const first = new Int32Array(inPhrases.length + 1);
  inPhrases.forEach((many, family) => (first[family + 1] = (first[family] ?? 0) + many));
  const next = first.slice();
  const all = new Int32Array(first.at(-1) ?? 0);
  for (let p = 0; p < start.length - 1; p += 1)
    for (let at = start[p] ?? 0; at < (start[p + 1] ?? 0); at += 1) {
      const family = own[at] ?? 0;
      const place = next[family] ?? 0;
      all[place] = p;
      next[family] = place + 1;
    }
  return (family) => all.subarray(first[family], first[family + 1]);
}
