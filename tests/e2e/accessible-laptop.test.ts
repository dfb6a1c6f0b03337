import { expect, test } from 'vitest';
import { findBarriers } from './support/barriers.ts';
import { everyLook } from './support/every-look.ts';

// The markup of every page is judged at the width of a phone; here what another width and other colors can change.
test('on a laptop, in dark colors, no look has a barrier, none is wider than the screen, none complains', async () => {
  const { barriers, troubles } = await findBarriers({ width: 1366, height: 768 }, 'dark', everyLook);
  expect(barriers).toEqual([]);
  expect(troubles).toEqual([]);
}, 600_000);
