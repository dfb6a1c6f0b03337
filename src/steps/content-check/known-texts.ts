/**
 * What an earlier build has read in texts and found in order: the fields of a file, the pieces of an article. Reading YAML
 * with the place of every field, and Markdown, is a good part of what a build with little to do has to do; a text that is
 * the same says the same. Kept beside the program, which is another one when the reader or a rule changes.
 */
import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { hash } from 'node:crypto';
import { join } from 'node:path';
import { writeWhole } from '../support/whole-file.ts';

const textsFile = 'texts.json';

/** What is read in a text. */
export type ReadAs = 'fields' | 'pieces';

export class KnownTexts {
  readonly #before: ReadonlyMap<string, unknown>;
  /** Those of the files there are today. */
  readonly #now = new Map<string, unknown>();

  private constructor(before: ReadonlyMap<string, unknown>) {
    this.#before = before;
  }

  /** @param folder of the program; none where it is still being made */
  static async load(folder: string | undefined): Promise<KnownTexts> {
    const file = folder === undefined ? '' : join(folder, textsFile);
    if (!existsSync(file)) return new KnownTexts(new Map());
    return new KnownTexts(new Map(JSON.parse(await readFile(file, 'utf8')) as [string, unknown][]));
  }

  /** What a text says, in a box of its own, or nothing where it was not read before. */
  of(as: ReadAs, text: string): { readonly data: unknown } | undefined {
    const mark = markOf(as, text);
    if (!this.#before.has(mark)) return undefined;
    const data = this.#before.get(mark);
    this.#now.set(mark, data);
    // Whoever changes what they were given must not change what is kept.
    return { data: structuredClone(data) };
  }

  put(as: ReadAs, text: string, data: unknown): void {
    this.#now.set(markOf(as, text), data);
  }

  keep(folder: string): void {
    writeWhole(join(folder, textsFile), JSON.stringify([...this.#now]));
  }
}

const markOf = (as: ReadAs, text: string): string => hash('sha256', `${as}\n${text}`, 'base64');
