/** What is said about the copy kept on the device. */
import { notice as en } from './en/notice.ts';
import { notice as es } from './es/notice.ts';
import type { InEach } from './lang.ts';

export const noticeWords: InEach<typeof en> = { en, es };
