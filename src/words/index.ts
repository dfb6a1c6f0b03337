/**
 * The words of everything around the articles, by language: one folder each, one file for each part.
 *
 * A new language is a folder like `es`, its name in `Lang`, and the lines below the type check then asks for.
 * What only the bench reads (calculators, listening, the planner) speaks English until a language brings it.
 * Topics of the core keep their own words in their folders.
 */
import * as en from './en/index.ts';
import * as es from './es/index.ts';

export type Lang = 'en' | 'es';

type InEach<Words> = Readonly<Record<Lang, Words>>;

const frames: InEach<typeof en.frame> = { en: en.frame, es: es.frame };

/** The frame around the articles. */
export function wordsFor(lang: Lang): typeof en.frame {
  return frames[lang];
}

export const startWords: InEach<typeof en.start> = { en: en.start, es: es.start };

export const checkWords: InEach<typeof en.check> = { en: en.check, es: es.check };

/** The sums to do before a day's cutting. */
export const daySums: InEach<typeof en.daySums> = { en: en.daySums, es: es.daySums };

export const searchWords: InEach<typeof en.search> = { en: en.search, es: es.search };
export type SearchWords = typeof en.search;

/** What is said about the copy kept on the device. */
export const noticeWords: InEach<typeof en.notice> = { en: en.notice, es: es.notice };

export type QuoteWords = typeof en.quote;
const quotes: InEach<QuoteWords> = { en: en.quote, es: es.quote };

/** The quote sheet, in the language the customer asks for. */
export function quoteWords(lang: Lang): QuoteWords {
  return quotes[lang];
}

/** The calculators. */
export const say = en.kit;
export const signalWord = en.level;
export const howSeen = en.how;
export const listenWords = en.listen;
export const engineEarWords = en.engineEar;
/** The job sheet, and the paper of it that the customer takes home. */
export const sheetWords = en.sheet;
export const customerPaperWords: InEach<typeof en.customerPaper> = { en: en.customerPaper, es: es.customerPaper };
/** Saws a mechanic adds on the device. */
export const ownSawWords = en.ownSaws;
/** The bench strip and what the device says. */
export const stripWords = en.strip;
/** A complaint's page and its planner. */
export const faultWords = en.fault;
export { aboutMinutes, minutes, percent } from './en/index.ts';
/** Handed on, not named here: so it is fetched with what listens, and weighs on no page before. */
export { hearEngine as hearEngineWords } from './en/hear-engine-open.ts';

const dateFormats = new Map<Lang, Intl.DateTimeFormat>();

export function formatDate(date: Date, lang: Lang): string {
  // Making a format takes longer than a hundred dates written with it.
  const known = dateFormats.get(lang) ?? new Intl.DateTimeFormat(lang, { dateStyle: 'long', timeZone: 'UTC' });
  dateFormats.set(lang, known);
  return known.format(date);
}
