/** Rules for what customers read, each just inside and just outside its limit. */
import { expect, test } from 'vitest';
import { problemsAfter } from './good-content.ts';

const guide = 'knowledge/guides/cutting-wet.mdx';
const top = (ids: string) => (text: string) => text.replace('hazards: [kickback]', `hazards: [${ids}]`);
const say = (sentence: string, times: number) => (text: string) =>
  `${text}\n${Array.from({ length: times }, () => sentence).join(' ')}\n`;

test('three cautions at the top of a guide are refused, two are not', async () => {
  // The one that stands in the text as well is not counted; the names need not exist for this.
  const said = async (ids: string) => (await problemsAfter(guide, top(ids))).filter((p) => p.includes('at the top'));
  expect(await said('kickback, a, b')).toEqual([]);
  expect(await said('kickback, a, b, c')).toEqual([
    expect.stringMatching(/cutting-wet\.mdx:\d+ hazards: 3 cautions at the top \| two at most/),
  ]);
});

test('long sentences of long words are refused with their grade, short ones are not', async () => {
  const hard =
    'Operators responsible for maintaining adequate irrigation must continuously ascertain that particulate concentrations remain satisfactorily controlled throughout operation.';
  expect(await problemsAfter(guide, say('Open the tap, then cut the slab.', 12))).toEqual([]);
  expect((await problemsAfter(guide, say(hard, 6))).join('\n')).toMatch(
    /cutting-wet\.mdx:1 text: grade \d+\.\d \(Flesch-Kincaid\), reading ease -?\d+\.\d \(Flesch\)/,
  );
});
