/** The quote sheet, in the language the customer asks for. */
import { quote as en } from './en/quote.ts';
import { quote as es } from './es/quote.ts';
import type { InEach, Lang } from './lang.ts';

export type QuoteWords = typeof en;
const quotes: InEach<QuoteWords> = { en, es };

export function quoteWords(lang: Lang): QuoteWords {
  return quotes[lang];
}
