/**
 * Words as outlines of the site's own face: drawn so, a picture is the same on every machine, whatever letters that
 * has. The face comes in all weights in one file, of which only the thinnest can be read here; a line around each
 * outline gives it body (./card.ts).
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { create, type Font } from 'fontkitten';

export interface Letter {
  readonly sign: string;
  readonly outline: string;
  /** In thousandths of the type's size. */
  readonly wide: number;
}

export interface SetLine {
  readonly text: string;
  /** In thousandths of the type's size. */
  readonly wide: number;
}

/** What the line around an outline adds to a letter's width. */
const spread = 34;

const files = ['latin', 'latin-ext'].map(
  (part) => `@fontsource-variable/bitter/files/bitter-${part}-wght-normal.woff2`,
);
let faces: readonly Font[] | undefined;
const letters = new Map<string, Letter>();

function letter(sign: string): Letter {
  const known = letters.get(sign);
  if (known) return known;
  const { resolve } = createRequire(import.meta.url);
  faces ??= files.map((file) => create(readFileSync(resolve(file))) as Font);
  const code = sign.codePointAt(0) ?? 32;
  const face = faces.find((f) => f.hasGlyphForCodePoint(code));
  const glyph = face?.glyphForCodePoint(code);
  // A sign of another alphabet leaves a gap; the words beside the picture hold it.
  const made: Letter = glyph
    ? { sign, outline: glyph.path.toSVG(), wide: (glyph.advanceWidth / (face?.unitsPerEm ?? 1000)) * 1000 + spread }
    : { sign, outline: '', wide: 500 };
  letters.set(sign, made);
  return made;
}

export function widthOf(text: string): number {
  return [...text].reduce((sum, sign) => sum + letter(sign).wide, 0);
}

/** Breaks a text into lines no wider than `most`; what does not fit into `lines` ends in "…". */
export function broken(text: string, most: number, lines: number): readonly SetLine[] {
  const set: string[] = [''];
  for (const word of text.split(/\s+/)) {
    const line = set.at(-1) ?? '';
    const longer = line === '' ? word : `${line} ${word}`;
    if (line === '' || widthOf(longer) <= most) set[set.length - 1] = longer;
    else set.push(word);
  }
  const shown = set.slice(0, lines);
  if (set.length > lines) shown[lines - 1] = `${shown[lines - 1] ?? ''}…`;
  return shown.map((line) => ({ text: line, wide: widthOf(line) }));
}

/** A letter and where its foot stands, in pixels. */
export interface Placed {
  readonly letter: Letter;
  readonly size: number;
  readonly x: number;
  readonly y: number;
}

/** The letters of one line, its foot at x, y. Each stands on a whole pixel, so that a letter is drawn once for all lines. */
export function set(text: string, x: number, y: number, size: number): readonly Placed[] {
  let at = 0;
  return [...text].map((sign) => {
    const made = letter(sign);
    const placed = { letter: made, size, x: x + Math.round((at / 1000) * size), y };
    at += made.wide;
    return placed;
  });
}
