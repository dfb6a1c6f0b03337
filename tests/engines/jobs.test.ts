/** The main jobs in every engine that is found: from a server, from disk, and installed with the server gone. */
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { serveFolder, type Serving } from '../../src/commands/support/serve.ts';
import { dist, oneOfEach } from '../e2e/support/site.ts';
import { engines } from './support/engines.ts';
import { click, keys, textOf, type, until, valueOf, type Tab } from './support/tab.ts';

/** Chromium does these jobs in the other tests; here it only shows that a job is asked rightly. */
const wanted = engines.filter((e) => e.name !== 'Chromium' || process.env['ALMANAC_ENGINES'] === 'all');
const there = wanted.flatMap(({ name, open }) => (open ? [{ name, open }] : []));

/** One page of each folder, and those at the top that a hand fills in. */
const kinds = oneOfEach.filter((page) => /\/|^(?:index|search|job-sheet|own-saws)\.html$/.test(page));

describe.each(there)('$name', ({ open }) => {
  let tab: Tab;
  let serving: Serving;
  beforeAll(async () => {
    serving = await serveFolder(dist);
    tab = await open();
  });
  afterAll(async () => {
    await tab.close();
    await serving.close();
  });

  const ways = [
    { way: 'from a server', at: (file: string) => serving.address + file },
    { way: 'from disk', at: (file: string) => new URL(file, pathToFileURL(join(dist, '/'))).href },
  ];
  const quiet = () => expect(tab.troubles() ?? []).toEqual([]);

  describe.each(ways)('$way', ({ at }) => {
    test('search finds a rare word and leads to its page', async () => {
      await tab.open(at('search.html'));
      await search(tab);
      quiet();
    });

    test('a calculator answers another figure, and a sum typed into a box', async () => {
      await tab.open(at('calculators/blade-speed.html'));
      await wake(tab);
      const before = await textOf(tab, '.calc-answer');
      await type(tab, '#blade-speed-diameter', '375 mm');
      await until(tab, `document.querySelector('.calc-answer').innerText !== ${JSON.stringify(before)}`);
      await sum(tab);
      quiet();
    });

    test('a fault search goes on where it was left', async () => {
      await tab.open(at('faults/vibration.html'));
      await until(tab, `document.querySelector('.fault[data-live=yes]')`);
      const first = await textOf(tab, '.fault-what');
      await click(tab, '.fault-now button', 'Looks sound');
      await until(tab, `document.querySelector('.fault-what').innerText !== ${JSON.stringify(first)}`);
      const second = await textOf(tab, '.fault-what');
      expect(await textOf(tab, '.fault-path')).toContain('looks sound');
      await tab.open(at('faults/vibration.html'));
      // What was answered is known at once; the plan for it follows.
      await until(tab, `document.querySelector('.fault-what').innerText === ${JSON.stringify(second)}`);
      expect(await textOf(tab, '.fault-path')).toContain('looks sound');
      quiet();
    });

    test('a job sheet keeps what was typed under its ticket', async () => {
      await tab.open(at('job-sheet.html'));
      await until(
        tab,
        `document.querySelector('.strip[data-live=yes]') && document.querySelector('.job[data-live=yes]')`,
      );
      await type(tab, '.strip input', '1432');
      await keys(tab, '\uE004');
      await until(tab, `document.querySelector('.job-ticket').innerText.includes('1432')`);
      await type(tab, '#job-customer', 'R. Amsel');
      await type(tab, '#job-note', 'Drags when warm');
      await click(tab, 'button', 'Add a note');
      await until(tab, `document.querySelector('.job').innerText.includes('Drags when warm')`);
      await tab.open(at('job-sheet.html'));
      await until(tab, `document.querySelector('.job[data-live=yes]')`);
      expect(await valueOf(tab, '#job-customer')).toBe('R. Amsel');
      expect(await textOf(tab, '.job')).toContain('Drags when warm');
      quiet();
    });
  });

  test('no kind of page is wider than a phone, and none complains', async () => {
    // A frame is as narrow as it is told; some windows are not. This file has no policy that would forbid it.
    await tab.open(`${serving.address}robots.txt`);
    expect(await tab.run(`(${widerThan})(390, ${JSON.stringify(kinds)})`)).toEqual([]);
    quiet();
  });

  test('kept by the browser after one visit, it works with the server gone', async ({ skip }) => {
    await tab.open(serving.address);
    if (!(await tab.run(`'serviceWorker' in navigator`))) skip('this browser keeps no sites');
    await until(tab, `document.querySelector('#edition-line[data-state=kept]')`);
    await serving.close();
    await tab.open(`${serving.address}guides/after-the-cut.html`);
    await until(tab, `document.querySelector('h1')?.innerText === 'After the cut'`);
    await tab.open(`${serving.address}calculators/blade-speed.html`);
    await wake(tab);
    await sum(tab);
    await tab.open(`${serving.address}search.html`);
    await search(tab);
    quiet();
  });
});

test.each(wanted.filter((e) => !e.open))('$name is on this machine', ({ name, install }) => {
  const advice = `${name} was not found; the jobs were not tried in it. On Debian: ${install}`;
  if (process.env['ALMANAC_ENGINES'] === 'all') expect.fail(advice);
  console.log(advice);
});

/** Said to the browser: which of the pages, one after the other in a frame of this width, can be pushed sideways. */
const widerThan = `async (width, pages) => {
  const frame = document.createElement('iframe');
  frame.style.width = width + 'px';
  document.body.append(frame);
  const wide = [];
  for (const page of pages) {
    await new Promise((done) => Object.assign(frame, { onload: done, src: page }));
    const { scrollWidth, clientWidth } = frame.contentDocument.documentElement;
    if (scrollWidth > clientWidth || frame.contentDocument.querySelector('h1') === null) wide.push(page);
  }
  return wide;
}`;

async function wake(tab: Tab): Promise<void> {
  await tab.run(`document.querySelector('section.calc').scrollIntoView()`);
  // A calculator comes alive when it is reached.
  await tab.run(`document.querySelector('section.calc').dispatchEvent(new Event('pointerover', { bubbles: true }))`);
  await until(tab, `document.querySelector('section.calc[data-live=yes]')`);
}

async function sum(tab: Tab): Promise<void> {
  await type(tab, '#blade-speed-diameter', '300 mm + 50 mm + 2 in');
  // 350 mm + 2 x 25.4 mm
  await until(tab, `document.querySelector('section.calc').innerText.includes('Read as 400.8 mm')`);
}

async function search(tab: Tab): Promise<void> {
  await type(tab, 'main input[type=search]', 'toothpick');
  await click(tab, '.find-results a', 'After the cut');
  await until(tab, `document.querySelector('h1')?.innerText === 'After the cut'`);
}
