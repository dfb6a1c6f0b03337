/** The quote of a ticket: what was typed for its paper, and its total in one line for the job sheet. */
import { isParts, type Kind } from './record.ts';

export interface KeptQuote {
  /** Boxes of the quote sheet, as typed. */
  readonly typed: Readonly<Record<string, string>>;
  /** "Total $285.13, November 25, 2026": what the job sheet says of it; '' until there is one. */
  readonly sentence: string;
  /** Page with the quote's figures, from the root of the site. */
  readonly link: string;
}

export const quoteKind: Kind<KeptQuote> = {
  name: 'quote',
  version: 1,
  precious: true,
  derived: ['sentence', 'link'],
  read: (data) => {
    if (!isParts(data) || !isParts(data['typed'])) return undefined;
    const typed = Object.entries(data['typed']).filter((t): t is [string, string] => typeof t[1] === 'string');
    const text = (key: string) => (typeof data[key] === 'string' ? data[key] : '');
    return { typed: Object.fromEntries(typed), sentence: text('sentence'), link: text('link') };
  },
};
