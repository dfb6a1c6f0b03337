/** Days as a reader says them. */
import type { Lang } from './lang.ts';

const formats = new Map<Lang, Intl.DateTimeFormat>();

/** "November 25, 2026" */
export function formatDate(date: Date, lang: Lang): string {
  // Making a format takes longer than a hundred dates written with it.
  const known = formats.get(lang) ?? new Intl.DateTimeFormat(lang, { dateStyle: 'long', timeZone: 'UTC' });
  formats.set(lang, known);
  return known.format(date);
}

/** "November 25, 2026, 0f3a9c1d" */
export function editionSaid({ day, mark }: { readonly day: string; readonly mark: string }, lang: Lang): string {
  return `${formatDate(new Date(`${day}T00:00:00Z`), lang)}, ${mark}`;
}
