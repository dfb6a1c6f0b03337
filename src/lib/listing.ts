/** Rows for lists of pages. */
import { articlesIn, type Folder } from './articles.ts';
import type { Lang } from '../words/index.ts';

export interface Row {
  readonly path: string;
  readonly title: string;
  readonly summary: string;
}

export async function rowsIn(folder: Folder, lang: Lang = 'en'): Promise<readonly Row[]> {
  return (await articlesIn(folder, lang)).map((a) => ({
    path: a.path,
    title: a.entry.data.title,
    summary: a.entry.data.summary,
  }));
}

/** What each section is for, said on its list page. */
export const sectionSays: Readonly<Record<Folder | 'faults', string>> = {
  guides:
    'For whoever runs the saw. One page each, made for a phone and for the counter: read it, print it, take it along.',
  jobs: 'Work at the bench, step by step, with the calculators in the steps that need them.',
  tables: 'Look a figure up: fits, intervals, rotation limits. Every table says where its figures come from.',
  explainers: 'Why the advice on the other pages is what it is.',
  calculators:
    'The sums a bench job needs, with range, working, sources and cautions. They run on this device; nothing is sent anywhere.',
  faults: 'Start from what the customer says. Each page lists the suspects and puts the cheap, telling checks first.',
};
