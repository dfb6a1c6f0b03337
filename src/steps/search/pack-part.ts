/** Packs one part of a Pagefind index as classic scripts, which load from a server and from disk alike. */
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { languages, type Lang } from '../../words/lang.ts';
import { listFiles } from '../support/files.ts';
import type { Row } from './page-parts.ts';
import { readFragments, type PagePlace } from './read-fragments.ts';
import { wordsSaid } from './words-said.ts';

/** Pagefind also writes ready-made search boxes and a worker; none of them is used. */
const used = /^(?:index|fragment)\/.+$/;

/** What the whole site's search needs of a part, besides its files. */
export interface PackedPart {
  readonly rows: readonly Row[];
  readonly places: readonly PagePlace[];
  /** By language: the words of its pages' text. */
  readonly said: Partial<Record<Lang, readonly string[]>>;
  /** By language: the script that hands over what Pagefind starts from in this part. */
  readonly start: Partial<Record<Lang, string>>;
  /** By language: the script that hands over Pagefind's program, the same in every part. */
  readonly program: Partial<Record<Lang, string>>;
  /** Pagefind's code for the browser, the same in every part. */
  readonly pagefind: string;
}

interface Entry {
  readonly languages: Readonly<Record<string, { readonly hash: string; readonly wasm?: string }>>;
}

/** A script that hands over a file's bytes under a name. */
const handing = (name: string, bytes: Buffer): string =>
  `almanacSearch.put(${JSON.stringify(name)},${JSON.stringify(bytes.toString('base64'))})\n`;

/**
 * @param plain  where Pagefind has written the part
 * @param number of the part
 * @param out    folder for its files
 */
export async function packPart(plain: string, number: number, out: string, rows: readonly Row[]): Promise<PackedPart> {
  for (const name of await listFiles(plain)) {
    if (!used.test(name)) continue;
    const file = join(out, `${name}.js`);
    await mkdir(dirname(file), { recursive: true });
    await writeFile(file, handing(`${number}/${name}`, await readFile(join(plain, name))));
  }
  const entryFile = 'pagefind-entry.json';
  const entry = await readFile(join(plain, entryFile));
  const { languages: written } = JSON.parse(entry.toString('utf8')) as Entry;
  const start: Record<string, string> = {};
  const program: Record<string, string> = {};
  for (const lang of new Set(rows.map((row) => row.lang))) {
    const { hash, wasm = 'unknown' } = written[lang] ?? { hash: '' };
    const meta = `pagefind.${hash}.pf_meta`;
    start[lang] =
      handing(`${number}/${entryFile}`, entry) + handing(`${number}/${meta}`, await readFile(join(plain, meta)));
    const file = `wasm.${wasm}.pagefind`;
    program[lang] = handing(file, await readFile(join(plain, file)));
  }
  const pagefind = await readFile(join(plain, 'pagefind.js'), 'utf8');
  const texts = await readFragments(plain, number);
  const langOf = new Map(rows.map((row) => [row.address, row.lang]));
  const said = languages.flatMap((lang) => {
    const mine = texts.filter(({ address }) => langOf.get(address) === lang);
    return mine.length > 0
      ? [
          [
            lang,
            wordsSaid(
              lang,
              mine.map(({ content }) => content),
            ),
          ] as const,
        ]
      : [];
  });
  const places = texts.map(({ address, page, file }) => ({ address, page, file }));
  return { rows, places, said: Object.fromEntries(said), start, program, pagefind };
}
