/** The quote sheet: in English at once, in the language the customer asks for when it is chosen. */
import type { Lang } from './lang.ts';
import { wordsFrom } from './words-from.ts';
import { quote } from './en/quote.ts';

export type QuoteWords = typeof quote;
export const quoteInEnglish = quote;

export function quoteIn(lang: Lang): Promise<QuoteWords> {
  return wordsFrom(import.meta.glob<QuoteWords>(['./*/quote.ts', '!./en/quote.ts'], { import: 'quote' }), lang);
}
