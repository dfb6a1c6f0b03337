import { expect, test } from 'vitest';
import { everything, findBarriers } from './support/barriers.ts';

test('on a phone, in light colors, no page has a barrier, none is wider than the screen, none complains', async () => {
  const { barriers, looked, troubles } = await findBarriers({ width: 390, height: 844 }, 'light', everything);
  expect(barriers).toEqual([]);
  expect(troubles).toEqual([]);
  expect(looked).toBeGreaterThan(40);
}, 600_000);
