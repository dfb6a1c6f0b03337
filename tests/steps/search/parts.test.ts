/** The search index in parts: every page is in one, always the same, and they are about as large as each other. */
import { expect, it } from 'vitest';
import { partOf, partsFor } from '../../../src/steps/search/index-pages.ts';

it('has one part up to 500 pages, and two above', () => {
  expect([1, 499, 500, 501, 5000].map(partsFor)).toEqual([1, 1, 1, 2, 2]);
});

it('puts a page into the same part whatever else there is, and fills the parts alike', () => {
  const pages = Array.from({ length: 2000 }, (_, i) => `explainers/made-note-${i}.html`);
  const sizes = [0, 0, 0, 0];
  for (const page of pages) sizes[partOf(page, 4)] = (sizes[partOf(page, 4)] ?? 0) + 1;
  // By chance alone one in a thousand such sites would have a part further off than this (binomial, 3.3 sigma of 19.4).
  for (const size of sizes) expect(Math.abs(size - 500)).toBeLessThan(65);
  // The first eight digits of SHA-1 (FIPS 180-4), reckoned by another program: f6013a00, 62e37e8d and 18f050ea.
  expect(['index.html', 'glossary.html', 'shop.html'].map((page) => partOf(page, 4))).toEqual([0, 1, 2]);
  expect(pages.every((page) => partOf(page, 1) === 0)).toBe(true);
});
