/**
 * The words of everything around the articles, by language: one folder each, one file for each part. Pages take them
 * from here; a script takes only its own part, from the file of that name, so that it carries no other.
 *
 * A new language is a folder like `es`, its name in `Lang`, and the lines in the parts' files the type check then asks
 * for. What only the bench reads (calculators, listening, the planner) speaks English until a language brings it.
 * Topics of the core keep their own words in their folders.
 */
import { frame as en } from './en/frame.ts';
import { frame as es } from './es/frame.ts';
import type { InEach, Lang } from './lang.ts';

export type { Lang } from './lang.ts';
export { checkWords } from './check.ts';
export { daySums } from './day-sums.ts';
export { aboutMinutes, aboutMinutesApart, faultWords, minutes, percent } from './fault.ts';
export { engineEarWords } from './hear-engine.ts';
export { hearEngineWords } from './hear-engine-open.ts';
export { howSeen, say, signalWord } from './kit.ts';
export { listenWords } from './listen.ts';
export { noticeWords } from './notice.ts';
export { ownSawWords } from './own-saws.ts';
export { quoteWords, type QuoteWords } from './quote.ts';
export { searchWords, type SearchWords } from './search.ts';
export { customerPaperWords, sheetWords } from './sheet.ts';
export { startWords } from './start.ts';
export { stripWords } from './strip.ts';

const frames: InEach<typeof en> = { en, es };

/** The frame around the articles. */
export function wordsFor(lang: Lang): typeof en {
  return frames[lang];
}

const dateFormats = new Map<Lang, Intl.DateTimeFormat>();

export function formatDate(date: Date, lang: Lang): string {
  // Making a format takes longer than a hundred dates written with it.
  const known = dateFormats.get(lang) ?? new Intl.DateTimeFormat(lang, { dateStyle: 'long', timeZone: 'UTC' });
  dateFormats.set(lang, known);
  return known.format(date);
}
