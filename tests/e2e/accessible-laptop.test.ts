import { expect, test } from 'vitest';
import { looks, findBarriers } from './support/barriers.ts';

test('on a laptop, in dark colors, no page has a barrier, none is wider than the screen, none complains', async () => {
  const { barriers, looked, troubles } = await findBarriers({ width: 1366, height: 768 }, 'dark', looks);
  expect(barriers).toEqual([]);
  expect(troubles).toEqual([]);
  expect(looked).toBeGreaterThan(40);
}, 600_000);
