/** The page about writing: every field of every schema and every component an article may use is on it, and explained. */
import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { z } from 'astro/zod';
import { aboutComponents, aboutKinds } from '../../src/components/writing/words.ts';
import { fieldRows } from '../../src/lib/fields.ts';
import { kinds } from '../../src/schemas/kinds.ts';
import { shop } from '../../src/schemas/shop.ts';
import { bodyProblems } from '../../src/steps/content-check/body-problems.ts';
import { readContentFile } from '../../src/steps/content-check/content-file.ts';
import { checkContent, readContent } from '../../src/steps/content-check/check-content.ts';
import { knownNames } from '../../src/steps/content-check/known-names.ts';
import { libraryOf } from '../../src/steps/content-check/library.ts';
import { listFiles } from '../../src/steps/support/files.ts';
import { samplesOf } from '../../src/steps/writing/samples.ts';

/** The names a schema has at its top, read from the schema's own shape and not from what the page makes of it. */
function namesOf(schema: z.ZodType): string[] {
  let inner = schema as unknown as { shape?: object; def?: { in?: unknown; innerType?: unknown } };
  while (!inner.shape && inner.def) inner = (inner.def.in ?? inner.def.innerType) as typeof inner;
  return Object.keys(inner.shape ?? {});
}

describe.each([...Object.entries(kinds), ['shop.yaml', { schema: shop }] as const])('%s', (_name, { schema }) => {
  const rows = fieldRows(schema);
  it('has every field of its schema', () => {
    expect(namesOf(schema).length).toBeGreaterThan(2);
    const top = rows.map((row) => row.name).filter((name) => !/[.[]/.test(name));
    expect(top).toEqual(namesOf(schema));
  });

  it('says of every field what it takes and what it is for', () => {
    expect(rows.filter((row) => row.takes === '' || row.says === '').map((row) => row.name)).toEqual([]);
  });
});

it('tells needed from not, what stands without it, and what is within', () => {
  const rows = new Map(fieldRows(kinds.jobs.schema).map((row) => [row.name, row]));
  expect(rows.get('time')).toMatchObject({ needed: true, takes: 'text' });
  expect(rows.get('draft')).toMatchObject({ needed: false, takes: 'true or false; without it false' });
  expect(rows.get('reviewed')).toMatchObject({ needed: true, takes: 'a day, as YYYY-MM-DD' });
  expect(fieldRows(kinds.faults.schema).map((row) => row.name)).toContain('checks[].tells[].ifFaulty');
});

it('shows every component, with an example that the content check takes', async () => {
  const known = await knownNames('.');
  const names = [...known.components.keys(), 'img', 'table'];
  const folder = 'src/components/writing/examples/';
  expect(names.filter((name) => !existsSync(`${folder}${name}.mdx`))).toEqual([]);
  for (const name of names.filter((n) => !existsSync(`src/components/tables/${n}.astro`)))
    expect(Object.keys(aboutComponents)).toContain(name);
  const everything = await listFiles('content/knowledge');
  const files = everything
    .filter((file) => /\.(?:mdx|yaml)$/.test(file))
    .map((file) => readContentFile(`content/knowledge/${file}`, readFileSync(`content/knowledge/${file}`)));
  const pictures = new Set((await listFiles(folder)).map((file) => `${folder}${file}`));
  const library = libraryOf(files, known, pictures, new Set());
  for (const name of names) {
    const text = readFileSync(`${folder}${name}.mdx`, 'utf8');
    const file = readContentFile(`${folder}${name}.mdx`, Buffer.from(`---\ntitle: x\n---\n${text}`));
    expect(bodyProblems(file, library), name).toEqual([]);
    if (!['img', 'table'].includes(name)) expect(text).toContain(`<${name}`);
  }
});

it('says of every kind of file what it is, and shows one of each the demo has', async () => {
  expect(Object.keys(aboutKinds)).toEqual(Object.keys(kinds));
  const samples = samplesOf('.', await readContent('.'));
  expect(Object.keys(kinds).filter((kind) => kind !== 'pages' && !samples[kind])).toEqual([]);
  for (const { file, text } of Object.values(samples)) expect(readFileSync(file, 'utf8').trimEnd()).toBe(text);
  expect(await checkContent('.', await knownNames('.'))).toEqual([]);
});
