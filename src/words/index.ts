/**
 * The words of everything around the articles, by language: one folder each, one file for each part. Pages take them
 * from here; a script takes only its own part, from the file of that name or from the page, so that it carries no
 * other language.
 *
 * What only the bench reads (calculators, listening, the planner) speaks English. Topics of the core keep their own
 * words in their folders.
 */
import { wordsIn, type Lang, type Language } from './lang.ts';

export * from './lang.ts';
export { editionSaid, formatDate } from './date.ts';
export { count, fill } from './say/fill.ts';
export { aboutMinutes, aboutMinutesApart, faultWords, minutes, percent } from './fault.ts';
export { engineEarWords } from './hear-engine.ts';
export { hearEngineWords } from './hear-engine-open.ts';
export { howSeen, say, signalWord } from './kit.ts';
export { listenWords } from './listen.ts';
export { ownSawWords } from './own-saws.ts';
export { sheetWords } from './sheet.ts';
export { stripWords } from './strip.ts';

/** The frame around the articles. */
export const wordsFor = (lang: Lang): Language['frame'] => wordsIn(lang).frame;
