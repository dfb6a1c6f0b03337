/**
 * Fields of files that an earlier build has read and found in order. Reading YAML with the place of every field is a third
 * of what a build with little to do has to do; a file whose text is the same has the same fields. Kept beside the
 * program, which is another one when the reader changes.
 */
import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { hash } from 'node:crypto';
import { join } from 'node:path';
import { writeWhole } from '../support/whole-file.ts';

const fieldsFile = 'fields.json';

export class KnownFields {
  readonly #before: ReadonlyMap<string, unknown>;
  /** Those of the files there are today. */
  readonly #now = new Map<string, unknown>();

  private constructor(before: ReadonlyMap<string, unknown>) {
    this.#before = before;
  }

  /** @param folder of the program; none where it is still being made */
  static async load(folder: string | undefined): Promise<KnownFields> {
    const file = folder === undefined ? '' : join(folder, fieldsFile);
    if (!existsSync(file)) return new KnownFields(new Map());
    return new KnownFields(new Map(JSON.parse(await readFile(file, 'utf8')) as [string, unknown][]));
  }

  /** What a text says, in a box of its own, or nothing where it was not read before. */
  of(text: string): { readonly data: unknown } | undefined {
    const mark = markOf(text);
    if (!this.#before.has(mark)) return undefined;
    const data = this.#before.get(mark);
    this.#now.set(mark, data);
    // Whoever changes what they were given must not change what is kept.
    return { data: structuredClone(data) };
  }

  put(text: string, data: unknown): void {
    this.#now.set(markOf(text), data);
  }

  keep(folder: string): void {
    writeWhole(join(folder, fieldsFile), JSON.stringify([...this.#now]));
  }
}

const markOf = (text: string): string => hash('sha256', text, 'base64');
