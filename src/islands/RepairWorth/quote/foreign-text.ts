/** What a quote says about figures that are not of its job, in the language of the sheet. */
import type { Foreign } from '../../kit/index.ts';
import type { QuoteWords } from '../../../words/quote.ts';

export function foreignText({ example, count, of }: Foreign, words: QuoteWords): string {
  return example ? words.example : words.notOfThisJob(String(count), String(of));
}
