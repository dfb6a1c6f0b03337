/** What the shop says of itself, in the reader's language where it has it. */
import type { Lang } from '../words/index.ts';
import { shop } from './shop.ts';

/** "tel:" link of the shop's number. */
export const tel = `tel:${shop.phone.replace(/[^\d+*#]/g, '')}`;

export interface ShopSaid {
  readonly line: string;
  readonly hours: readonly string[];
  readonly visit: { readonly bring: readonly string[]; readonly look: string } | undefined;
}

export function shopIn(lang: Lang): ShopSaid {
  const own = lang === 'es' ? shop.es : undefined;
  return { line: own?.line ?? shop.line, hours: own?.hours ?? shop.hours, visit: own?.visit ?? shop.visit };
}
