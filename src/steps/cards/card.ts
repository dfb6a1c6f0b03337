/** The picture that stands beside a link in a message: the page's title, the shop's name, where the page is. */
import sharp from 'sharp';
import { mixed } from '../look/color.ts';
import { broken, drawn } from './letters.ts';
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

/** White words on black, for the shades. */
export function cardDrawing({ title, shop, host }: Card): string {
  const settings = sizes.map(({ size, lines }) => ({ size, set: broken(title, (room / size) * 1000, lines) }));
  const fits = ({ size, set }: (typeof settings)[number]) =>
    !set.at(-1)?.text.endsWith('…') && set.every((line) => line.wide * size <= room * 1000);
  const { size, set } = settings.find(fits) ?? settings[settings.length - 1] ?? { size: 34, set: [] };
  const words = [
    drawn(shop, left, 52, 20),
    ...set.map((line, i) => drawn(line.text, left, 114 + i * size * 1.16, size)),
    drawn(host, left, height - 18, 17),
  ];
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}"><rect width="100%" height="100%"/><g fill="#fff" stroke="#fff" stroke-width="52" stroke-linejoin="round">${words.join('')}</g></svg>`;
}

export async function cardPicture(drawing: string, { paper, ink, action }: Colors): Promise<Buffer> {
  const { data, info } = await sharp(Buffer.from(drawing))
    .toColourspace('b-w')
    .raw()
    .toBuffer({ resolveWithObject: true });
  const pixels = new Uint8Array(width * height);
  for (let i = 0; i < pixels.length; i += 1) {
    const shade = Math.round(((data[i * info.channels] ?? 0) / 255) * (shades - 1));
    pixels[i] = i % width < bar ? shades : shade;
  }
  const palette = Array.from({ length: shades }, (_, i) => mixed(paper, ink, i / (shades - 1)));
  return png(pixels, width, [...palette, action]);
}
