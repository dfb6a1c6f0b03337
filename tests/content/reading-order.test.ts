/** A reader meets [1] first, then [2]. */
import { expect, test } from 'vitest';
import { inReadingOrder } from '../../src/lib/reading-order.ts';

const mark = (...ids: string[]) => ids.map((id) => `Said. <Source id="${id}" />`).join('\n');

test.each([
  ['as listed where the text names them so', ['a', 'b'], mark('a', 'b'), ['a', 'b']],
  ['as the text names them', ['a', 'b', 'c'], mark('c', 'a', 'b'), ['c', 'a', 'b']],
  ['the first mark counts', ['a', 'b'], mark('b', 'a', 'b'), ['b', 'a']],
  ['those without a mark come last, in their order', ['a', 'b', 'c'], mark('c'), ['c', 'a', 'b']],
  ['a mark of a source that is not listed has no number', ['a'], mark('z', 'a'), ['a']],
  ['nothing named, nothing moved', ['a', 'b'], 'Said.', ['a', 'b']],
])('%s', (_, sources, body, order) => {
  expect(inReadingOrder(sources, body)).toEqual(order);
});
