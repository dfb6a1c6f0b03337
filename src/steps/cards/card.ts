/** The picture that stands beside a link in a message: the page's title, the shop's name, where the page is. */
import { mixed } from '../look/color.ts';
import { broken, set, type Placed } from './letters.ts';
import { png } from './png.ts';

export const width = 600;
export const height = 315;

export interface Colors {
  readonly paper: string;
  readonly ink: string;
  readonly action: string;
}

export interface Card {
  readonly title: string;
  readonly shop: string;
  /** "example.org" */
  readonly host: string;
}

const left = 48;
const bar = 14;
const room = width - left - 30;
/** Shades from paper to ink; the last place of the palette is the bar's. */
const shades = 15;

/** Sizes of the title with the lines each has room for: a short title is set larger. */
const sizes = [
  { size: 48, lines: 3 },
  { size: 40, lines: 4 },
  { size: 34, lines: 4 },
] as const;

/** Every letter of the card with its place. */
export function cardLetters({ title, shop, host }: Card): readonly Placed[] {
  const settings = sizes.map(({ size, lines }) => ({ size, lines: broken(title, (room / size) * 1000, lines) }));
  const fits = ({ size, lines }: (typeof settings)[number]) =>
    !lines.at(-1)?.text.endsWith('…') && lines.every((line) => line.wide * size <= room * 1000);
  const { size, lines } = settings.find(fits) ?? settings[settings.length - 1] ?? { size: 34, lines: [] };
  return [
    ...set(shop, left, 52, 20),
    ...lines.flatMap((line, i) => set(line.text, left, Math.round(114 + i * size * 1.16), size)),
    ...set(host, left, height - 18, 17),
  ];
}

/** The card that is being drawn: one sheet for all of them. */
const pixels = new Uint8Array(width * height);

export async function cardPicture(letters: readonly Placed[], { paper, ink, action }: Colors): Promise<Buffer> {
  const drawn = await Promise.all(letters.map(async (placed) => ({ placed, as: await stamp(placed) })));
  pixels.fill(0);
  for (const { placed, as } of drawn) lay(as, placed);
  for (let y = 0; y < height; y += 1) pixels.fill(shades, y * width, y * width + bar);
  const palette = Array.from({ length: shades }, (_, i) => mixed(paper, ink, i / (shades - 1)));
  return png(pixels, width, [...palette, action]);
}

/** A letter in shades, as wide and high as it needs; its foot stands at `left`, `foot` of it. */
interface Stamp {
  readonly shades: Uint8Array;
  readonly wide: number;
  readonly high: number;
  readonly left: number;
  readonly foot: number;
}

/** Drawn once for all cards: a site of a thousand titles is made of some two hundred letters. */
const stamps = new Map<string, Promise<Stamp>>();

function stamp({ letter, size }: Placed): Promise<Stamp> {
  const key = `${size} ${letter.sign}`;
  const known = stamps.get(key) ?? drawLetter(letter.outline, letter.wide, size);
  stamps.set(key, known);
  return known;
}

/** White on black, with a line around the outline that gives it body, and room on all sides for what hangs over. */
async function drawLetter(outline: string, wide: number, size: number): Promise<Stamp> {
  const side = Math.ceil(size * 0.3);
  const foot = Math.ceil(size * 1.1);
  const box = { wide: Math.ceil((wide / 1000) * size) + 2 * side, high: foot + Math.ceil(size * 0.4) };
  if (outline === '') return { shades: new Uint8Array(), wide: 0, high: 0, left: 0, foot: 0 };
  const scale = size / 1000;
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${box.wide}" height="${box.high}"><rect width="100%" height="100%"/><path transform="translate(${side} ${foot}) scale(${scale} ${-scale})" fill="#fff" stroke="#fff" stroke-width="52" stroke-linejoin="round" d="${outline}"/></svg>`;
  // Only for a card that is drawn: it takes long to load.
  const { default: sharp } = await import('sharp');
  const { data, info } = await sharp(Buffer.from(svg)).toColourspace('b-w').raw().toBuffer({ resolveWithObject: true });
  const made = Uint8Array.from({ length: box.wide * box.high }, (_, i) =>
    Math.round(((data[i * info.channels] ?? 0) / 255) * (shades - 1)),
  );
  return cut(made, box.wide, { left: side, foot });
}

/** Without the empty room around the letter: what is laid on each card is as small as it can be. */
function cut(shades: Uint8Array, wide: number, at: Pick<Stamp, 'left' | 'foot'>): Stamp {
  let [first, last, top, bottom] = [wide, -1, shades.length, -1];
  shades.forEach((shade, i) => {
    if (shade === 0) return;
    const [x, y] = [i % wide, Math.floor(i / wide)];
    [first, last] = [Math.min(first, x), Math.max(last, x)];
    [top, bottom] = [Math.min(top, y), Math.max(bottom, y)];
  });
  const box = { wide: Math.max(0, last - first + 1), high: Math.max(0, bottom - top + 1) };
  const kept = Uint8Array.from(
    { length: box.wide * box.high },
    (_, i) => shades[(top + Math.floor(i / box.wide)) * wide + first + (i % box.wide)] ?? 0,
  );
  return { shades: kept, ...box, left: at.left - first, foot: at.foot - top };
}

/** Where letters touch, the darker shade stands; what would lie beyond the edge is not there. */
function lay(stamp: Stamp, { x, y }: Placed): void {
  const [toX, toY] = [x - stamp.left, y - stamp.foot];
  const last = Math.min(stamp.wide, width - toX);
  for (let row = Math.max(0, -toY); row < Math.min(stamp.high, height - toY); row += 1)
    for (let column = Math.max(0, -toX); column < last; column += 1) {
      const at = (toY + row) * width + toX + column;
      pixels[at] = Math.max(pixels[at] ?? 0, stamp.shades[row * stamp.wide + column] ?? 0);
    }
}
