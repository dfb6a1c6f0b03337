/** The edition as it stands at the foot of a page: "November 25, 2026, 0f3a9c1d". */
import { edition } from 'almanac:edition';
import { formatDate, type Lang } from '../words/index.ts';

export function editionText(lang: Lang): string {
  return `${formatDate(new Date(`${edition.day}T00:00:00Z`), lang)}, ${edition.mark}`;
}
