import { describe, expect, it } from 'vitest';
import { beginsInTitle, toHit } from '../../src/islands/Search/found.ts';

const page = {
  title: 'Ring slips, sings or jumps out',
  kind: 'fault',
  part: '',
  address: '/faults/ring-slips.html',
  summary: 'Rollers, drive wheel and ring wear together.',
} as const;

describe('the text below a hit', () => {
  it.each([
    ['Ring <mark>slips,</mark> sings or jumps out. Next check, 1 of 6.', true],
    ['sings or jumps out. Next check, 1 of 6.', true],
    // One word of a name may begin any sentence.
    ['out. Next check, 1 of 6.', false],
    ['The ring <mark>slips</mark> when the rollers are worn.', false],
    ['Ring slips often.', false],
    ['', false],
  ])('"%s" begins in the name: %s', (excerpt, begins) => expect(beginsInTitle(excerpt, page.title)).toBe(begins));

  it('is the summary where the piece found is only the name, and the piece where it says more', () => {
    const said = (excerpt: string) =>
      toHit({ ...page, excerpt })
        .excerpt.map((run) => run.text)
        .join('');
    expect(said('Ring <mark>slips,</mark> sings or jumps out. Next check')).toBe(page.summary);
    expect(said('The ring <mark>slips</mark> when worn.')).toBe('The ring slips when worn.');
  });
});
