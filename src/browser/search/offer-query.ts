/** A calculator's own link to figures, for an offer: what was typed is the reader's own, all other boxes stay empty. */
import type { Offer } from './sizes.ts';

export function offerQuery({ page, figures }: Offer): string {
  const keys = Object.keys(figures);
  if (keys.length === 0) return '';
  const query = new URLSearchParams({ calc: page.replace(/^.*\/|\.html.*$/g, '') });
  for (const key of keys) query.set(`f.${key}`, figures[key] ?? '');
  query.set('own', keys.join('~'));
  return query.toString();
}
