/** The pictures of messages, read back by another program than the one that wrote them. */
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { addCards } from '../../src/steps/cards/add-cards.ts';
import { CardsAhead } from '../../src/steps/cards/cards-ahead.ts';
import { broken, widthOf } from '../../src/steps/cards/letters.ts';
import { png } from '../../src/steps/cards/png.ts';

describe('a picture of few colors', () => {
  it('opens in another program with the same pixels', async () => {
    const palette = ['#ff0000', '#00ff00', '#0000ff'];
    const bytes = png(Uint8Array.from([0, 1, 2, 2, 1, 0]), 3, palette);
    const { data, info } = await sharp(bytes).removeAlpha().raw().toBuffer({ resolveWithObject: true });
    expect([info.width, info.height, info.channels]).toEqual([3, 2, 3]);
    const rgb = (place: number) => [...data.subarray(place * 3, place * 3 + 3)];
    expect([0, 1, 2, 3, 4, 5].map(rgb)).toEqual(
      [0, 1, 2, 2, 1, 0].map((i) => [...Buffer.from(palette[i]?.slice(1) ?? '', 'hex')]),
    );
  });
});

describe('words', () => {
  it('break where they fit, and end in three dots where they do not', () => {
    const lines = broken('one two three four five six seven', 6000, 2);
    expect(lines).toHaveLength(2);
    expect(lines.every((line) => widthOf(line.text.replace('…', '')) <= 6000)).toBe(true);
    expect(lines.at(-1)?.text).toMatch(/…$/);
    expect(broken('short', 6000, 2).map((line) => line.text)).toEqual(['short']);
  });

  it('of Spanish and of other Latin alphabets have outlines', () => {
    expect(widthOf('ñ')).not.toBe(500);
    expect(widthOf('ł')).not.toBe(500);
  });
});

describe('the cards of a site', () => {
  const place = mkdtempSync(join(tmpdir(), 'almanac-cards-'));
  const page = (title: string, file: string) =>
    `<html><head><meta property="og:site_name" content="Ribera &amp; sons"><meta property="og:title" content="${title}"><meta property="og:image" content="https://example.org/saws/cards/${file}"></head></html>`;
  const draw = (dist: string) =>
    addCards(join(place, dist), join(place, 'cache'), 'https://example.org/saws/', '#5b2a86');
  beforeAll(async () => {
    for (const dist of ['one', 'two']) {
      mkdirSync(join(place, dist, 'jobs'), { recursive: true });
      writeFileSync(join(place, dist, 'index.html'), page('Ribera &amp; sons', 'start.png'));
      writeFileSync(join(place, dist, 'jobs/belt.html'), page('Change the belt', 'jobs/belt.png'));
      writeFileSync(join(place, dist, '404.html'), '<html><head></head></html>');
      await draw(dist);
    }
  });
  afterAll(() => rmSync(place, { recursive: true }));

  it('are one for each page with an address, of the size its page says, in the colors of the shop', async () => {
    expect(readdirSync(join(place, 'one/cards'), { recursive: true, encoding: 'utf8' }).sort()).toEqual(
      ['jobs', join('jobs', 'belt.png'), 'start.png'].sort(),
    );
    const { data, info } = await sharp(join(place, 'one/cards/jobs/belt.png'))
      .removeAlpha()
      .raw()
      .toBuffer({ resolveWithObject: true });
    expect([info.width, info.height]).toEqual([600, 315]);
    // The bar at the edge is the shop's color, the ground beside it the page's; somewhere stands ink.
    expect([...data.subarray(0, 3)]).toEqual([0x5b, 0x2a, 0x86]);
    expect([...data.subarray(60, 63)]).toEqual([0xf2, 0xf3, 0xf1]);
    expect(data.includes(0x18)).toBe(true);
  });

  it('are the same bytes whether drawn or taken from the cache, and small', () => {
    const [one, two] = ['one', 'two'].map((dist) => readFileSync(join(place, dist, 'cards/jobs/belt.png')));
    expect(two?.equals(one ?? Buffer.alloc(0))).toBe(true);
    expect(one?.length).toBeLessThan(15_000);
    expect(readdirSync(join(place, 'cache'))).toHaveLength(2);
  });

  it('are drawn once', async () => {
    const [first = ''] = readdirSync(join(place, 'cache'));
    const before = statSync(join(place, 'cache', first)).mtimeMs;
    await draw('one');
    expect(statSync(join(place, 'cache', first)).mtimeMs).toBe(before);
  });

  it('that were drawn ahead are those that pages name', async () => {
    const ahead = {
      titles: ['Change the belt'],
      shop: 'Ribera & sons',
      cache: join(place, 'ahead'),
      site: 'https://example.org/saws/',
      color: '#5b2a86',
    };
    const cards = new CardsAhead(ahead);
    await cards.ended;
    await cards.stop();
    const [belt = '', ...more] = readdirSync(ahead.cache);
    expect(more).toEqual([]);
    expect(readdirSync(join(place, 'cache'))).toContain(belt);
    expect(readFileSync(join(ahead.cache, belt))).toEqual(readFileSync(join(place, 'one/cards/jobs/belt.png')));
  });
});
