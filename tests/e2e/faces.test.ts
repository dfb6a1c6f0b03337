/** The faces of the site are cut from their packages: nothing a page says is missing, and what is there is the same. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import { create, type Font } from 'fontkitten';
import { expect, test } from 'vitest';
import { pages, readPage } from './support/site.ts';

const { resolve } = createRequire(import.meta.url);
const open = (file: string): Font => {
  const font = create(readFileSync(file));
  if (!('glyphForCodePoint' in font)) throw new Error(`${file} holds several faces.`);
  return font;
};
const ours = (name: string) => open(fileURLToPath(new URL(`../../src/styles/faces/${name}.woff2`, import.meta.url)));

test.each([400, 700])('digits of weight %i are those of the package', (weight) => {
  const whole = open(resolve(`@fontsource/b612-mono/files/b612-mono-latin-${weight}-normal.woff2`));
  const cut = ours(`figures-${weight}`);
  for (const digit of '0123456789') {
    const [a, b] = [cut, whole].map((font) => font.glyphForCodePoint(digit.codePointAt(0) ?? 0));
    expect(a?.path.toSVG(), digit).toMatch(/^M/);
    expect([a?.path.toSVG(), a?.advanceWidth], digit).toEqual([b?.path.toSVG(), b?.advanceWidth]);
  }
});

test('every sign of every page that the face of the words has stands in the cut one', () => {
  const whole = open(resolve('@fontsource-variable/bitter/files/bitter-latin-wght-normal.woff2'));
  const cut = ours('words');
  const signs = new Set(pages.flatMap((file) => [...new Set(readPage(file))]));
  expect(signs.size).toBeGreaterThan(80);
  const codes = [...signs].map((sign) => sign.codePointAt(0) ?? 0).filter((code) => code >= 0x20);
  expect(
    codes
      .filter((code) => whole.hasGlyphForCodePoint(code) && !cut.hasGlyphForCodePoint(code))
      .map((code) => String.fromCodePoint(code)),
  ).toEqual([]);
});
