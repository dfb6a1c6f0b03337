/** The paper the customer takes home: plain words, no sums, no percentages. Only paper shows it. */
import type { Lang } from '../../words/lang.ts';
import type { CustomerPaperWords } from '../../words/sheet.ts';
import type { JobSheetProps } from './props.ts';
import type { Sheet } from './use-sheet.ts';

interface Props {
  readonly sheet: Sheet;
  readonly machine: string;
  readonly lang: Lang;
  readonly say: CustomerPaperWords;
  readonly shop: JobSheetProps['shop'];
}

export function CustomerPaper({ sheet, machine, lang, say, shop }: Props) {
  const { head } = sheet;
  const found = sheet.searches.flatMap((s) => (s.was ? [s.was.name] : []));
  const parts = sheet.entries.filter((e) => e.kind === 'part').map((e) => e.sentence);
  const checked = Object.keys(say.checkNames).filter((key) => head.checks[key] === true);
  return (
    <article class="job-customer" lang={lang}>
      <header>
        <p class="job-customer-title">{say.title}</p>
        <dl>
          {pair(say.ticket, sheet.ticket)}
          {pair(say.machine, machine)}
          {pair(say.customer, head.customer)}
          {pair(say.takenIn, day(head.takenIn, lang))}
          {pair(say.handedBack, day(head.handedBack, lang))}
        </dl>
      </header>
      {part(say.said, head.complaint)}
      {part(say.found, found.join('. '), 'en')}
      {part(say.done, head.notes)}
      {list(say.parts, parts)}
      {list(
        say.checks,
        checked.map((key) => say.checkNames[key] ?? ''),
      )}
      <section class="job-customer-caution">
        <h2>{say.caution}</h2>
        <ul>
          {say.orders.map((order) => (
            <li key={order}>{order}</li>
          ))}
          <li>{say.stop(shop.phone)}</li>
        </ul>
      </section>
      <p class="job-customer-sign">
        <span>{say.customer}</span>
        <span>{say.signature}</span>
      </p>
    </article>
  );

  function pair(label: string, value: string) {
    return (
      value.trim() !== '' && (
        <div>
          <dt>{label}</dt>
          <dd>{value}</dd>
        </div>
      )
    );
  }

  /** What was typed is in the language it was typed in; a suspect's name is the site's English. */
  function part(title: string, text: string, of: Lang = lang) {
    return (
      text.trim() !== '' && (
        <section>
          <h2>{title}</h2>
          <p lang={of}>{text}</p>
        </section>
      )
    );
  }

  function list(title: string, items: readonly string[]) {
    return (
      items.length > 0 && (
        <section>
          <h2>{title}</h2>
          <ul>
            {items.map((item) => (
              <li key={item}>{item}</li>
            ))}
          </ul>
        </section>
      )
    );
  }
}

/** @param text YYYY-MM-DD; anything else is written as it stands */
function day(text: string, lang: Lang): string {
  const moment = new Date(`${text}T00:00:00Z`);
  return Number.isNaN(moment.getTime())
    ? text
    : new Intl.DateTimeFormat(lang, { dateStyle: 'long', timeZone: 'UTC' }).format(moment);
}
