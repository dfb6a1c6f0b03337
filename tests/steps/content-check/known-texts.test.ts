/** What was read once is taken as it was, and a mistake found in it later is still told with its line. */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { readContentFile } from '../../../src/steps/content-check/content-file.ts';
import { KnownTexts } from '../../../src/steps/content-check/known-texts.ts';
import { parseBody } from '../../../src/steps/content-check/parse-body.ts';
import { presetProblems } from '../../../src/steps/content-check/preset-problems.ts';
import { readYaml } from '../../../src/steps/content-check/yaml-text.ts';

const text = 'title: Belt\nkinds:\n  - saw\n  - ring\nreviewed: 2026-01-31\n';
let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'almanac-texts-'));
});
afterAll(() => rm(folder, { recursive: true }));

it('gives the same fields and lines as reading does, and only for the very same text', async () => {
  const first = await KnownTexts.load(undefined);
  const read = readYaml('a.yaml', text, 2, first);
  const broken = readYaml('b.yaml', 'title: "Belt\n', 2, first);
  expect(broken.problems).not.toEqual([]);
  first.keep(folder);

  const again = await KnownTexts.load(folder);
  expect(again.of('fields', text)).toEqual({ data: read.data });
  expect(again.of('fields', `${text} `)).toBeUndefined();
  expect(again.of('fields', 'title: "Belt\n')).toBeUndefined();
  const known = readYaml('a.yaml', text, 2, again);
  expect(known.data).toEqual({ title: 'Belt', kinds: ['saw', 'ring'], reviewed: '2026-01-31' });
  for (const path of [['title'], ['kinds', 1], ['reviewed'], ['missing']])
    expect(known.lineOf(path), path.join('.')).toBe(read.lineOf(path));
  expect(known.lineOf(['kinds', 1])).toBe(5);
});

it('lets nobody change what is kept, and forgets what no file says any more', async () => {
  const known = await KnownTexts.load(folder);
  (known.of('fields', text)?.data as { kinds: string[] }).kinds.push('floor');
  expect(known.of('fields', text)?.data).toMatchObject({ kinds: ['saw', 'ring'] });
  const later = await KnownTexts.load(folder);
  later.put('fields', 'title: Cord\n', { title: 'Cord' });
  later.keep(folder);
  const last = await KnownTexts.load(folder);
  expect(last.of('fields', text)).toBeUndefined();
  expect(last.of('fields', 'title: Cord\n')).toEqual({ data: { title: 'Cord' } });
});

const article = `---
title: Belt
---
## Change it

See [the cord](/jobs/cord/) and ![a belt](./belt.jpg), [there][nope].

<Calculator topic="belt-tension" preset={{ span: '300 mm' }} />
`;
const read = (known?: KnownTexts) => readContentFile('content/knowledge/jobs/belt.mdx', Buffer.from(article), known);

it('knows the pieces of an article again, each with its line, and looks at no figures twice', async () => {
  const first = await KnownTexts.load(undefined);
  const anew = parseBody(read(first));
  expect(anew.known).toBe(false);
  expect(anew.pieces.map(({ type, line, url }) => [type, line, url])).toEqual([
    ['heading', 4, undefined],
    ['link', 6, '/jobs/cord/'],
    ['image', 6, './belt.jpg'],
    ['text', 6, undefined],
    ['mdxJsxFlowElement', 8, undefined],
  ]);
  expect(anew.pieces).toEqual(parseBody(read()).pieces);
  // "span" is no field of a belt's tension.
  expect((await presetProblems([read()])).map(({ line, got }) => [line, got])).toEqual([[8, 'the field span']]);
  first.keep(folder);
  const again = await KnownTexts.load(folder);
  expect(parseBody(read(again))).toEqual({ ...anew, known: true });
  expect(await presetProblems([read(again)])).toEqual([]);
});

it('keeps nothing of an article that cannot be read', async () => {
  const known = await KnownTexts.load(undefined);
  const broken = readContentFile(
    'content/knowledge/jobs/b.mdx',
    Buffer.from('---\ntitle: B\n---\nunder <5 mm\n'),
    known,
  );
  expect(parseBody(broken).problems).toHaveLength(1);
  known.keep(folder);
  expect((await KnownTexts.load(folder)).of('pieces', broken.body)).toBeUndefined();
});
