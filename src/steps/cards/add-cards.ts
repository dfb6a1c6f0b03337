/**
 * Draws the picture each page names for its card. A drawing that was made before is taken from the cache, so that only
 * new titles cost anything. Only a site with an address has cards: a message needs to know where the picture is.
 */
import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { copyFile, mkdir, readFile, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { tokens, token, withColor } from '../look/tokens.ts';
import { listFiles } from '../support/files.ts';
import { cardDrawing, cardPicture, type Colors } from './card.ts';

/** Folder of the pictures; no part of what a device keeps for reading without a signal. */
export const cardFolder = 'cards';

/** Drawn at once: one for each core of a small machine. */
const atOnce = 2;

interface Wanted {
  readonly file: string;
  readonly drawing: string;
}

/** @param site the address of the site @param color the shop's own, where it has one */
export async function addCards(dist: string, cache: string, site: string, color: string | undefined): Promise<void> {
  const sheet = color === undefined ? tokens() : withColor(tokens(), color);
  const of = (name: string) => token(sheet, name).light;
  const colors: Colors = { paper: of('paper'), ink: of('ink'), action: of('action') };
  const host = new URL(site).host;
  const wanted = new Map<string, Wanted>();
  for (const page of (await listFiles(dist)).filter((file) => file.endsWith('.html'))) {
    const head = (await readFile(join(dist, page), 'utf8')).slice(0, 8000);
    const file = decodeURI(property(head, 'og:image').split(`/${cardFolder}/`)[1] ?? '');
    if (file === '' || wanted.has(file)) continue;
    const card = { title: property(head, 'og:title'), shop: property(head, 'og:site_name'), host };
    wanted.set(file, { file, drawing: cardDrawing(card) });
  }
  const waiting = [...wanted.values()];
  await mkdir(cache, { recursive: true });
  const work = async (): Promise<void> => {
    for (let next = waiting.pop(); next; next = waiting.pop()) await draw(next, dist, cache, colors);
  };
  await Promise.all(Array.from({ length: atOnce }, work));
}

async function draw({ file, drawing }: Wanted, dist: string, cache: string, colors: Colors): Promise<void> {
  const mark = createHash('sha256').update(drawing).update(JSON.stringify(colors)).digest('hex').slice(0, 24);
  const kept = join(cache, `${mark}.png`);
  const path = join(dist, cardFolder, file);
  await mkdir(dirname(path), { recursive: true });
  if (!existsSync(kept)) await writeFile(kept, await cardPicture(drawing, colors));
  await copyFile(kept, path);
}

const signs: Readonly<Record<string, string>> = {
  amp: '&',
  quot: '"',
  lt: '<',
  gt: '>',
  '#39': "'",
  '#34': '"',
  '#38': '&',
};

function property(head: string, name: string): string {
  const content = new RegExp(`<meta property="${name}" content="([^"]*)"`).exec(head)?.[1] ?? '';
  return content.replace(/&(#?\w+);/g, (whole, sign: string) => signs[sign] ?? whole);
}
