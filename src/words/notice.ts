/** What is said about the copy kept on the device: a page hands its words to the script. */
import type { Language } from './lang.ts';

export type NoticeWords = Language['notice'];

declare global {
  var almanacNotice: NoticeWords | undefined;
}
