/** The start page. */
import { start as en } from './en/start.ts';
import { start as es } from './es/start.ts';
import type { InEach } from './lang.ts';

export const startWords: InEach<typeof en> = { en, es };
