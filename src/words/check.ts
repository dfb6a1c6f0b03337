/** The check before a cut: a page hands its words to the script. */
import type { Language } from './lang.ts';

export type CheckWords = Language['check']['onScreen'];
