/** What readers type and where the right page must come, and how well a list of answers does it. */
import { readFileSync } from 'node:fs';

export interface Query {
  readonly lang: 'en' | 'es';
  readonly query: string;
  /** The right pages, from the site's folder; with an anchor where the place on the page matters. */
  readonly pages?: readonly string[];
  /** 1: first; 3: among the first three. */
  readonly within?: number;
  /** The answer stands on the other language's pages, and the box must say so. */
  readonly other?: boolean;
  /** Written before the ranking had met it: scored as a whole, never asked for one by one. */
  readonly held?: boolean;
}

export const queries = JSON.parse(readFileSync(new URL('queries.json', import.meta.url), 'utf8')) as readonly Query[];

/** Place of the first right page, from 1; 0 when it is not among the hits. */
export function placeOf({ pages = [] }: Query, hits: readonly string[]): number {
  const right = (hit: string) => pages.includes(hit) || pages.includes(hit.replace(/#.*$/, ''));
  return hits.findIndex(right) + 1;
}

/** First, among three, lost (beyond eight), and the mean of 1 / place, all in per cent. */
export function scoreOf(places: readonly number[]): string {
  const part = (those: (place: number) => boolean) => percent(places.filter(those).length / places.length);
  const mean = places.reduce((sum, place) => sum + (place > 0 && place <= 8 ? 1 / place : 0), 0) / places.length;
  const lost = places.filter((place) => place === 0 || place > 8).length;
  return `first ${part((p) => p === 1)}, in three ${part((p) => p > 0 && p <= 3)}, lost ${lost}, score ${percent(mean)}`;
}

const percent = (share: number): string => `${(share * 100).toFixed(1)} %`;
