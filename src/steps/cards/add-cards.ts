/**
 * Draws the picture each page names for its card. A drawing that was made before is taken from the cache, so that only
 * new titles cost anything. Only a site with an address has cards: a message needs to know where the picture is.
 */
import { createHash } from 'node:crypto';
import { copyFileSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { tokens, token, withColor } from '../look/tokens.ts';
import { listFiles } from '../support/files.ts';
import { cardLetters, cardPicture, height, width, type Card, type Colors } from './card.ts';

/** Folder of the pictures; no part of what a device keeps for reading without a signal. */
export const cardFolder = 'cards';

/** Raised when a card of the same words and colors comes out otherwise, so that none of the old ones is taken. */
const drawnBy = 1;

/** The cards that pages name, each once. */
export class CardList {
  readonly wanted = new Map<string, Card>();

  note(page: string): void {
    const head = page.slice(0, 8000);
    const file = decodeURI(property(head, 'og:image').split(`/${cardFolder}/`)[1] ?? '');
    if (file === '' || this.wanted.has(file)) return;
    this.wanted.set(file, { title: property(head, 'og:title'), shop: property(head, 'og:site_name'), host: '' });
  }
}

/** Where drawn cards are kept. */
export const cardCache = (project: string): string => join(project, 'node_modules/.cache/almanac-cards');

/** @param site the address of the site @param color the shop's own, where it has one */
export async function addCards(dist: string, cache: string, site: string, color: string | undefined): Promise<void> {
  const cards = new CardList();
  for (const page of (await listFiles(dist)).filter((file) => file.endsWith('.html')))
    cards.note(readFileSync(join(dist, page), 'utf8'));
  await drawCards(cards, dist, cache, site, color);
}

export async function drawCards(
  cards: CardList,
  dist: string,
  cache: string,
  site: string,
  color: string | undefined,
): Promise<void> {
  const sheet = color === undefined ? tokens() : withColor(tokens(), color);
  const of = (name: string) => token(sheet, name).light;
  const colors: Colors = { paper: of('paper'), ink: of('ink'), action: of('action') };
  const { host } = new URL(site);
  mkdirSync(cache, { recursive: true });
  for (const [file, card] of cards.wanted) await draw(file, { ...card, host }, dist, cache, colors);
}

async function draw(file: string, card: Card, dist: string, cache: string, colors: Colors): Promise<void> {
  const about = JSON.stringify([drawnBy, width, height, card, colors]);
  const mark = createHash('sha256').update(about).digest('hex').slice(0, 24);
  const kept = join(cache, `${mark}.png`);
  const path = join(dist, cardFolder, file);
  mkdirSync(dirname(path), { recursive: true });
  if (!existsSync(kept)) writeFileSync(kept, await cardPicture(cardLetters(card), colors));
  copyFileSync(kept, path);
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
