/** The job sheet, and the paper of it that the customer takes home: in another language when it is chosen. */
import type { Lang } from './lang.ts';
import { wordsFrom } from './words-from.ts';
import { customerPaper } from './en/sheet.ts';

export { sheet as sheetWords } from './en/sheet.ts';

export type CustomerPaperWords = typeof customerPaper;
export const customerPaperInEnglish = customerPaper;

export function customerPaperIn(lang: Lang): Promise<CustomerPaperWords> {
  const others = import.meta.glob<CustomerPaperWords>(['./*/sheet.ts', '!./en/sheet.ts'], { import: 'customerPaper' });
  return wordsFrom(others, lang);
}
