/** One repair, one sheet: what was said, looked at, measured, fitted and checked, under the ticket on the bench. */
import { useState } from 'preact/hooks';
import { countOnSheet, takeOut, textsFrom, ticketKeys } from '../../browser/device/index.ts';
import { siteLink } from '../../browser/site-link.ts';
import { customerPaperIn, customerPaperInEnglish, sheetWords as say } from '../../words/sheet.ts';
import { LanguageBox } from '../languages/LanguageBox.tsx';
import { useWords } from '../languages/use-words.ts';
import { ownMachine } from '../BenchStrip/own-machines.ts';
import { AddLines } from './AddLines.tsx';
import { CustomerPaper } from './CustomerPaper.tsx';
import { Entries } from './Entries.tsx';
import { Files } from './Files.tsx';
import { HandBack, Head, Words } from './Head.tsx';
import type { JobSheetProps } from './props.ts';
import { useSheet } from './use-sheet.ts';

export default function JobSheet({ shop, machines, languages, handBack }: JobSheetProps) {
  const { live, sheet, set } = useSheet();
  const { lang, words, choose } = useWords(customerPaperInEnglish, customerPaperIn);
  const [undo, setUndo] = useState<{ readonly text: string; readonly back: () => void }>();
  const onBench = machines.find((m) => m.id === sheet.machine)?.name ?? ownMachine(sheet.machine)?.name ?? '';

  function remove(): void {
    const keys = textsFrom(ticketKeys(sheet.ticket)).map(([key]) => key);
    setUndo({ text: say.removed(sheet.ticket), back: takeOut(keys) });
  }

  return (
    <div class="job" data-live={live ? 'yes' : 'no'}>
      <div class="job-shop">
        <div class="job-top">
          <p class="job-ticket">
            <b>{say.ofTicket(sheet.ticket)}</b>{' '}
            <span class="job-quiet no-print">
              {sheet.ticket === '' ? say.noTicket : say.entries(live ? countOnSheet(sheet.ticket) : 0)}
            </span>
          </p>
          <p class="job-acts no-print">
            <button type="button" class="job-first" disabled={!live} onClick={() => print('shop')}>
              {say.printShop}
            </button>
            <button type="button" class="job-plain" disabled={!live} onClick={() => print('customer')}>
              {say.printCustomer}
            </button>
            <LanguageBox offered={languages} lang={lang} choose={choose} label={say.customerIn} disabled={!live} />
            <button type="button" class="job-plain" disabled={!live} onClick={remove}>
              {say.remove}
            </button>
          </p>
        </div>
        {undo && (
          <p class="job-undo no-print" role="status">
            <span>{undo.text}</span>
            <button
              type="button"
              class="job-plain"
              onClick={() => {
                undo.back();
                setUndo(undefined);
              }}
            >
              {say.undo}
            </button>
          </p>
        )}
        <Head head={sheet.head} live={live} machine={onBench} set={set} />
        <Entries sheet={sheet} takeOut={(key, what) => setUndo({ text: say.takenOut(what), back: takeOut([key]) })} />
        <AddLines live={live} />
        <Words
          name="notes"
          value={sheet.head.notes}
          live={live}
          help={say.notesHelp}
          onText={(notes) => set({ notes })}
        />
        <HandBack head={sheet.head} live={live} set={set} />
        {handBack !== undefined && (
          <p class="no-print">
            <a href={siteLink(handBack)}>{say.fullList}</a>
          </p>
        )}
        <div class="job-on-paper job-hand" aria-hidden="true">
          <b>{say.byHand}</b>
          <i />
          <i />
          <i />
          <i />
          <i />
        </div>
        <Files live={live} ticket={sheet.ticket} others={sheet.others} />
      </div>
      <CustomerPaper sheet={sheet} machine={sheet.head.machine || onBench} lang={lang} say={words} shop={shop} />
    </div>
  );
}

/** The style sheet shows one paper or the other by this mark. */
function print(paper: 'shop' | 'customer'): void {
  const root = document.documentElement;
  root.dataset['paper'] = paper;
  window.addEventListener('afterprint', () => delete root.dataset['paper'], { once: true });
  window.print();
}
