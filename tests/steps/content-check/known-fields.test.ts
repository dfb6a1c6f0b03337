/** Fields that were read once are taken as they were, and a mistake found in them later is still told with its line. */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { KnownFields } from '../../../src/steps/content-check/known-fields.ts';
import { readYaml } from '../../../src/steps/content-check/yaml-text.ts';

const text = 'title: Belt\nkinds:\n  - saw\n  - ring\nreviewed: 2026-01-31\n';
let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'almanac-fields-'));
});
afterAll(() => rm(folder, { recursive: true }));

it('gives the same fields and lines as reading does, and only for the very same text', async () => {
  const first = await KnownFields.load(undefined);
  const read = readYaml('a.yaml', text, 2, first);
  const broken = readYaml('b.yaml', 'title: "Belt\n', 2, first);
  expect(broken.problems).not.toEqual([]);
  first.keep(folder);

  const again = await KnownFields.load(folder);
  expect(again.of(text)).toEqual({ data: read.data });
  expect(again.of(`${text} `)).toBeUndefined();
  expect(again.of('title: "Belt\n')).toBeUndefined();
  const known = readYaml('a.yaml', text, 2, again);
  expect(known.data).toEqual({ title: 'Belt', kinds: ['saw', 'ring'], reviewed: '2026-01-31' });
  for (const path of [['title'], ['kinds', 1], ['reviewed'], ['missing']])
    expect(known.lineOf(path), path.join('.')).toBe(read.lineOf(path));
  expect(known.lineOf(['kinds', 1])).toBe(5);
});

it('lets nobody change what is kept, and forgets what no file says any more', async () => {
  const known = await KnownFields.load(folder);
  (known.of(text)?.data as { kinds: string[] }).kinds.push('floor');
  expect(known.of(text)?.data).toMatchObject({ kinds: ['saw', 'ring'] });
  const later = await KnownFields.load(folder);
  later.put('title: Cord\n', { title: 'Cord' });
  later.keep(folder);
  const last = await KnownFields.load(folder);
  expect(last.of(text)).toBeUndefined();
  expect(last.of('title: Cord\n')).toEqual({ data: { title: 'Cord' } });
});
