/** The sheet the customer takes home: one page, plain words, nothing of the shop's own sums. */
import type { Foreign, ShopFacts } from '../../kit/index.ts';
import { quoteLines, type QuoteData } from './data.ts';
import { validUntil, type Letter } from './letter.ts';
import { dayWriter, moneyWriter, numberWriter } from './money.ts';
import { QuoteChoices } from './QuoteChoices.tsx';
import { QuoteLines } from './QuoteLines.tsx';
import { foreignText } from './foreign-text.ts';
import type { Lang } from '../../../words/lang.ts';
import type { QuoteWords } from '../../../words/quote.ts';

interface Props {
  readonly id: string;
  readonly data: QuoteData;
  readonly letter: Letter;
  readonly shop: ShopFacts;
  /** The language of the paper, and its words in it. */
  readonly lang: Lang;
  readonly words: QuoteWords;
  /** Figures that are nobody's; the paper says so. */
  readonly foreign?: Foreign | undefined;
}

/** More lines than this are set smaller, so that the sheet stays one page. */
const many = 10;

export function QuoteSheet({ id, data, letter, shop, lang, words, foreign }: Props) {
  const money = moneyWriter(lang, shop.currency);
  const number = numberWriter(lang, shop.currency);
  const day = dayWriter(lang, shop.currency);
  const lines = quoteLines(data);
  const until = validUntil(letter);
  const credited = data.feeCredited && data.fee > 0;
  const notIncluded = [
    words.hidden,
    ...(data.engineChecked ? [] : [words.engineOpen]),
    ...(data.fee > 0 ? [credited ? words.feeStays(money(data.fee)) : words.feeOwed(money(data.fee))] : []),
    words.others,
    ...(letter.alsoNotIncluded.trim() ? [letter.alsoNotIncluded.trim()] : []),
  ];
  return (
    <article class={lines.length > many ? 'sheet sheet-many' : 'sheet'} id={id} lang={lang} aria-label={words.quote}>
      {foreign && <p class="calc-band">{foreignText(foreign, words)}</p>}
      <header class="sheet-head">
        <div>
          <p class="sheet-shop">{shop.name}</p>
          <p>{[...shop.address, shop.phone].join(', ')}</p>
        </div>
        <div class="sheet-title">
          <h4>
            {words.quote}
            {letter.number.trim() && (
              <span class="sheet-number">
                {' '}
                {words.number} {letter.number.trim()}
              </span>
            )}
          </h4>
          {letter.date && <p>{day(letter.date)}</p>}
        </div>
      </header>
      <dl class="sheet-facts">
        <Fact name={words.for} text={letter.customer} />
        <Fact name={words.machine} text={letter.machine} />
        <Fact name={words.work} text={letter.work} />
      </dl>
      <QuoteLines data={data} lines={lines} words={words} money={money} number={number} />
      {until && <p class="sheet-until">{words.until(day(until))}</p>}
      <QuoteChoices data={data} words={words} money={money} number={number} />
      <section class="sheet-part">
        <h5>{words.notIncluded}</h5>
        <ul>
          {notIncluded.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
        {data.engineChecked && <p>{words.engineGood}</p>}
      </section>
      <section class="sheet-part sheet-answer">
        <h5>{words.answer}</h5>
        <ul class="sheet-ticks">
          {[words.yes, words.wantNew, words.no].map((line) => (
            <li key={line}>
              <span class="sheet-tick" aria-hidden="true" />
              {line}
            </li>
          ))}
        </ul>
        <p class="sheet-sign">
          <span>{words.name}</span>
          <span>{words.signature}</span>
          <span>{words.signed}</span>
        </p>
      </section>
    </article>
  );
}

function Fact({ name, text }: { readonly name: string; readonly text: string }) {
  return text.trim() === '' ? null : (
    <div>
      <dt>{name}</dt>
      <dd>{text.trim()}</dd>
    </div>
  );
}
