import { expect, test } from 'vitest';
import { findBarriers } from './support/barriers.ts';
import { everyLook } from './support/every-look.ts';
import { pages } from './support/site.ts';

test('on a phone, in light colors, no page has a barrier, none is wider than the screen, none complains', async () => {
  expect(pages.length).toBeGreaterThan(40);
  expect(everyLook.length).toBeGreaterThan(20);
  const { barriers, troubles } = await findBarriers({ width: 390, height: 844 }, 'light', pages);
  expect(barriers).toEqual([]);
  expect(troubles).toEqual([]);
}, 600_000);
