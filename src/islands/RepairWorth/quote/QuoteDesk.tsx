/** Beside the answer: the words for the paper, the sheet as it will print, and its file. */
import { useEffect } from 'preact/hooks';
import { csvText } from '../../../core/export/index.ts';
import { DeskBox, download, foreignIn, printAlone, type TakeAwayProps } from '../../kit/index.ts';
import { quoteData } from './data.ts';
import { quoteRows } from './file.ts';
import { foreignText } from './foreign-text.ts';
import { usualDays, type Letter } from './letter.ts';
import { dayWriter, moneyWriter } from './money.ts';
import { QuoteSheet } from './QuoteSheet.tsx';
import { useLetter } from './use-letter.ts';
import { LanguageBox } from '../../languages/LanguageBox.tsx';
import { useWords } from '../../languages/use-words.ts';
import { quoteIn, quoteInEnglish } from '../../../words/quote.ts';

export function QuoteDesk({ page, worked, stale }: TakeAwayProps) {
  const offered = page.shop.languages ?? [];
  const { letter, language, set, say } = useLetter(`/calculators/${page.name}/`);
  const { lang, words, choose } = useWords(quoteInEnglish, quoteIn);
  const wanted = offered.find((one) => one.lang === language)?.lang ?? 'en';
  // Each ticket has the language of its own customer.
  // eslint-disable-next-line react-hooks/exhaustive-deps
  useEffect(() => choose(wanted), [wanted]);
  const id = `${page.id}-quote-sheet`;
  const data = quoteData(worked.answer, worked.inputs);
  const foreign = foreignIn(worked);
  const draft = foreign ? [[foreignText(foreign, words), null, null, null]] : [];
  const total = moneyWriter('en', page.shop.currency)(data.total);
  const sentence = `${quoteInEnglish.total} ${total}, ${dayWriter('en', page.shop.currency)(letter.date)}`;
  // A total of figures that are nobody's is no quote yet; one that is being changed keeps what it said before.
  useEffect(() => {
    if (!stale) say(foreign ? '' : sentence);
  });
  const print = () => {
    const sheet = document.getElementById(id);
    if (sheet) printAlone(sheet);
  };
  const save = () =>
    download(
      [words.file, letter.number, letter.customer].join(' '),
      'csv',
      csvText([...draft, ...quoteRows(data, letter, page.shop, words)]),
    );
  const box = (key: keyof Letter, label: string, more: { help?: string; type?: 'date' | 'number' } = {}) => (
    <DeskBox id={`${id}-${key}`} label={label} value={letter[key]} onText={(text) => set({ [key]: text })} {...more} />
  );

  return (
    <section class="desk" aria-labelledby={`${id}-head`}>
      <h3 class="calc-head" id={`${id}-head`}>
        Quote sheet for the customer
      </h3>
      <p class="calc-help">
        The sheet shows prices, tax, total and the three choices. Costs, markups and margins stay here. These boxes are
        kept on this device with the ticket.
      </p>
      <div class="desk-split">
        <div class="calc-fields">
          {box('customer', 'Customer')}
          {box('machine', 'Machine')}
          {box('work', 'What is done', { help: 'In the language of the sheet.' })}
          {box('alsoNotIncluded', 'Also not included')}
          {box('number', 'Quote number')}
          {box('date', 'Date', { type: 'date' })}
          {box('days', 'Prices hold for, days', { type: 'number', help: `${usualDays}, as a rule.` })}
        </div>
        <div>
          <QuoteSheet
            id={id}
            data={data}
            letter={letter}
            shop={page.shop}
            lang={lang}
            words={words}
            foreign={foreign}
          />
          <div class="desk-acts">
            <label for={`${id}-language`}>Sheet in</label>
            <LanguageBox id={`${id}-language`} offered={offered} lang={lang} choose={(to) => set({ language: to })} />
            <button type="button" class="calc-button calc-button-first" disabled={stale} onClick={print}>
              Print the quote
            </button>
            <button type="button" class="calc-button" disabled={stale} onClick={save}>
              Save it as a table (CSV)
            </button>
          </div>
          <p class={stale ? 'calc-help' : 'calc-help desk-at-hand'}>
            Put the boxes above right first: this sheet is for the earlier figures.
          </p>
        </div>
      </div>
    </section>
  );
}
