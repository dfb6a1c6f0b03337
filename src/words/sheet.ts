/** The job sheet, and the paper of it that the customer takes home. */
import { customerPaper as en } from './en/sheet.ts';
import { customerPaper as es } from './es/sheet.ts';
import type { InEach } from './lang.ts';

export { sheet as sheetWords } from './en/sheet.ts';
export const customerPaperWords: InEach<typeof en> = { en, es };
