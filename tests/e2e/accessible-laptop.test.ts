import { expect, test } from 'vitest';
import { findBarriers } from './support/barriers.ts';

test('on a laptop, in light and dark, no page has a barrier and none is wider than the screen', async () => {
  const { barriers, looked } = await findBarriers({ width: 1366, height: 768 });
  expect(barriers).toEqual([]);
  expect(looked).toBeGreaterThan(40);
}, 600_000);
