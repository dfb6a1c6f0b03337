import { expect, test } from 'vitest';
import { findBarriers } from './support/barriers.ts';

test('on a phone, in light and dark, no page has a barrier and none is wider than the screen', async () => {
  const { barriers, looked } = await findBarriers({ width: 390, height: 844 });
  expect(barriers).toEqual([]);
  expect(looked).toBeGreaterThan(40);
}, 600_000);
