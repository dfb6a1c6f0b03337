/** The list of titles, other words and headings: what the build packs, the search box reads. */
import { expect, it } from 'vitest';
import { formsOf } from '../../../src/browser/language/forms.ts';
import { stem } from '../../../src/browser/language/stem.ts';
import { readList } from '../../../src/browser/search/list.ts';
import { packList } from '../../../src/steps/search/pack-list.ts';
import { wordsSaid } from '../../../src/steps/search/words-said.ts';
import { speechOf } from '../../../src/words/lang.ts';
import type { Row } from '../../../src/steps/search/page-parts.ts';

const row = (address: string, title: string, more: Partial<Row> = {}): Row => ({
  ...{ address, title, lang: 'en', kind: 'guide', reader: '', aliases: [], headings: [] },
  ...more,
});
const rows = [
  row('guides/wet.html', 'Cutting wet', {
    aliases: ['no water', 'water, more water'],
    headings: [{ anchor: 'tap', text: 'The tap' }],
  }),
  row('jobs/belt.html', 'Belt slips', { kind: 'job', headings: [{ anchor: 'pulley', text: 'Belt and pulley' }] }),
  row('es/otra.html', 'Otra', { lang: 'es' }),
];
const texts = rows.map(({ address }, at) => ({
  address,
  page: `en_${at}`,
  file: `${at % 2}/group`,
}));
const speech = speechOf('en');
const list = readList(packList('en', rows, texts, wordsSaid('en', ['A gasket.']), {}, ['es']), 'en', speech);
const family = (word: string) => stem(word, speech);
const standing = (word: string) => [...(list.standsIn(family(word)) ?? [])].map((n) => list.phrase(n));

it('holds the pages of its language alone', () => {
  expect(list.rows.map(({ address, kind, file }) => [address, kind, file])).toEqual([
    ['guides/wet.html', 'guide', '0/group'],
    ['jobs/belt.html', 'job', '1/group'],
  ]);
  expect(list.rowOf('1', 'en_1')).toBe(1);
  // The same number in another part of the full text is another page.
  expect(list.rowOf('0', 'en_1')).toBeUndefined();
});

it('knows in which phrases a word stands, however it is bent, and where a heading is', () => {
  expect(standing('water').map(({ row, kind, length }) => [row, kind, length])).toEqual([
    [0, 'alias', 2],
    [0, 'alias', 2],
  ]);
  expect(standing('belt').map(({ row, kind, anchor }) => [row, kind, anchor])).toEqual([
    [1, 'title', undefined],
    [1, 'heading', 'pulley'],
  ]);
  expect(standing('tap').map(({ anchor }) => anchor)).toEqual(['tap']);
  expect(list.standsIn(family('gasket'))).toBeUndefined();
});

it('tells a phrase that denies', () => {
  expect(standing('water').map(({ denies }) => denies)).toEqual([true, false]);
});

it('weighs a word by the pages it stands on, and a phrase by its words', () => {
  // Two pages; "belt" stands on one of them, "nowhere" on none.
  expect(list.weightOf(family('belt'))).toBeCloseTo(Math.log(3), 12);
  expect(list.weightOf(family('nowhere'))).toBeCloseTo(Math.log(3), 12);
  expect(standing('pulley')[0]?.total).toBeCloseTo(2 * Math.log(3), 12);
});

it('knows words of the text that stand in no phrase', () => {
  const isThere = (word: string) => list.inText(formsOf(word, speech));
  expect([isThere('gaskets'), isThere('belts'), isThere('piston')]).toEqual([true, true, false]);
});
