/** The sums to do before a day's cutting. */
import { daySums as en } from './en/day-sums.ts';
import { daySums as es } from './es/day-sums.ts';
import type { InEach } from './lang.ts';

export const daySums: InEach<typeof en> = { en, es };
