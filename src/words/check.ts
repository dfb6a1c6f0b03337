/** The check before a cut. */
import { check as en } from './en/check.ts';
import { check as es } from './es/check.ts';
import type { InEach } from './lang.ts';

export const checkWords: InEach<typeof en> = { en, es };
