/** The search: a page hands its words to the script. */
import type { Language } from './lang.ts';

export type SearchWords = Language['search'];
