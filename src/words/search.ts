/** The search. */
import { search as en } from './en/search.ts';
import { search as es } from './es/search.ts';
import type { InEach } from './lang.ts';

export type SearchWords = typeof en;
export const searchWords: InEach<typeof en> = { en, es };
