/** Pages that stand stay in the files of the builds that wrote them, until these are many or hold little else. */
import { existsSync, mkdtempSync, renameSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import {
  filesOf,
  isPageFile,
  isSpread,
  newPageFile,
  PageFiles,
  type PagePlace,
} from '../../../src/steps/pages/page-files.ts';
import { unfinished } from '../../../src/steps/support/whole-file.ts';

const folder = mkdtempSync(join(tmpdir(), 'almanac-page-files-'));
afterAll(() => rmSync(folder, { recursive: true }));

function written(name: string, texts: readonly string[]): readonly PagePlace[] {
  const files = new PageFiles(folder, name, []);
  const places = texts.map((text) => files.write(Buffer.from(text)));
  files.close();
  renameSync(unfinished(join(folder, name)), join(folder, name));
  return places;
}

it('gives back each page from the file it is in, also when that is cleared away meanwhile', () => {
  const [belt, cord] = written('pages-1.html', ['<p>Belt ä</p>', '<p>Cord</p>']);
  const [fresh] = written('pages-2.html', ['<p>Belt, edited</p>']);
  const files = new PageFiles(folder, 'pages-3.html', ['pages-1.html', 'pages-2.html']);
  if (process.platform !== 'win32') rmSync(join(folder, 'pages-1.html'));
  expect([belt, cord, fresh].map((place) => place && files.read(place).toString())).toEqual([
    '<p>Belt ä</p>',
    '<p>Cord</p>',
    '<p>Belt, edited</p>',
  ]);
  expect(() => files.read({ in: 'pages-2.html', at: 9, length: 90 })).toThrow('pages-2.html holds no 90 bytes at 9');
  expect(() => files.read({ in: 'pages-9.html', at: 0, length: 1 })).toThrow('pages-9.html');
  files.close();
  // Not there under its own name before it is whole.
  expect(existsSync(join(folder, 'pages-3.html'))).toBe(false);
});

it('brings pages together when they lie in more than eight files, or more than half of these is of no use', () => {
  const each = Array.from({ length: 9 }, (_, at) => written(`pages-1${at}.html`, ['page'])).flat();
  expect(isSpread(folder, each.slice(0, 8))).toBe(false);
  expect(isSpread(folder, each)).toBe(true);
  const ten = written(
    'pages-20.html',
    Array.from({ length: 10 }, () => 'page'),
  );
  expect(isSpread(folder, ten.slice(5))).toBe(false);
  expect(isSpread(folder, ten.slice(6))).toBe(true);
  expect(isSpread(folder, [])).toBe(false);
  expect(filesOf([...ten, ...each.slice(0, 1)])).toEqual(['pages-20.html', 'pages-10.html']);
  expect([newPageFile(), 'pages-20.html', 'pages.json', 'part-0-1f'].map(isPageFile)).toEqual([
    true,
    true,
    false,
    false,
  ]);
});
