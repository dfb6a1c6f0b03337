/**
 * Draws the picture each page names for its card. A drawing that was made before is taken from the cache, so that only
 * new titles cost anything. Only a site with an address has cards: a message needs to know where the picture is.
 */
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { tokens, token, withColor } from '../look/tokens.ts';
import { listFiles } from '../support/files.ts';
import { writeWhole } from '../support/whole-file.ts';
import { cardLetters, cardPicture, height, width, type Card, type Colors } from './card.ts';

/** Folder of the pictures; no part of what a device keeps for reading without a signal. */
export const cardFolder = 'cards';

/** Raised when a card of the same words and colors comes out otherwise, so that none of the old ones is taken. */
const drawnBy = 1;

/** The cards that pages name, each once. */
export class CardList {
  readonly wanted = new Map<string, Card>();

  note(named: NamedCard | undefined): void {
    if (named && !this.wanted.has(named.file)) this.wanted.set(named.file, named.card);
  }
}

/** A card, and its file below the folder of cards. */
export interface NamedCard {
  readonly file: string;
  readonly card: Card;
}

/** The card a page names. */
export function cardOf(page: string): NamedCard | undefined {
  const head = page.slice(0, 8000);
  const file = decodeURI(property(head, 'og:image').split(`/${cardFolder}/`)[1] ?? '');
  if (file === '') return undefined;
  return { file, card: { title: property(head, 'og:title'), shop: property(head, 'og:site_name'), host: '' } };
}

/** Where drawn cards are kept. */
export const cardCache = (project: string): string => join(project, 'node_modules/.cache/almanac-cards');

/** @param site the address of the site @param color the shop's own, where it has one */
export async function addCards(dist: string, cache: string, site: string, color: string | undefined): Promise<void> {
  const cards = new CardList();
  for (const page of (await listFiles(dist)).filter((file) => file.endsWith('.html')))
    cards.note(cardOf(readFileSync(join(dist, page), 'utf8')));
  await drawCards(cards, dist, cache, site, color);
}

export async function drawCards(
  cards: CardList,
  dist: string,
  cache: string,
  site: string,
  color: string | undefined,
): Promise<void> {
  const colors = colorsWith(color);
  const { host } = new URL(site);
  mkdirSync(cache, { recursive: true });
  const folders = new Set<string>();
  for (const [file, card] of cards.wanted) {
    const path = join(dist, cardFolder, file);
    if (!folders.has(dirname(path))) mkdirSync(dirname(path), { recursive: true });
    folders.add(dirname(path));
    // Read and written: for so small a file a third of the time of having it copied.
    writeFileSync(path, readFileSync(await kept({ ...card, host }, cache, colors)));
  }
}

/** What is known of cards before there are pages: an article's card has its title. */
export interface TitlesAhead {
  readonly titles: readonly string[];
  /** The shop's name. */
  readonly shop: string;
  readonly cache: string;
  readonly site: string;
  readonly color: string | undefined;
}

/** Draws into the cache; a card that has other words after all is drawn later. */
export async function drawAhead({ titles, shop, cache, site, color }: TitlesAhead): Promise<void> {
  const colors = colorsWith(color);
  const { host } = new URL(site);
  mkdirSync(cache, { recursive: true });
  for (const title of titles) await kept({ title, shop, host }, cache, colors);
}

function colorsWith(color: string | undefined): Colors {
  const sheet = color === undefined ? tokens() : withColor(tokens(), color);
  const of = (name: string) => token(sheet, name).light;
  return { paper: of('paper'), ink: of('ink'), action: of('action') };
}

/** The drawing of a card in the cache, drawn now if it is not there. */
async function kept(card: Card, cache: string, colors: Colors): Promise<string> {
  const about = JSON.stringify([drawnBy, width, height, card, colors]);
  const mark = createHash('sha256').update(about).digest('hex').slice(0, 24);
  const file = join(cache, `${mark}.png`);
  if (existsSync(file)) return file;
  writeWhole(file, await cardPicture(cardLetters(card), colors));
  return file;
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
