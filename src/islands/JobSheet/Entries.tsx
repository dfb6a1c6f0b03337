/** What stands on the sheet, in order of time; each leads back to its page. */
import type { ComponentChildren } from 'preact';
import type { EntryLine, KeptEntry, KeptQuote } from '../../browser/device/index.ts';
import { siteLink } from '../../browser/site-link.ts';
import { percent } from '../../words/fault.ts';
import { sheetWords as say } from '../../words/sheet.ts';
import type { KeptSearch, Sheet } from './use-sheet.ts';

interface Props {
  readonly sheet: Sheet;
  readonly takeOut: (key: string, what: string) => void;
}

export function Entries({ sheet, takeOut }: Props) {
  const rows = [
    ...sheet.searches.map((s) => ({ at: searchTime(s), row: <SearchRow key={s.key} search={s} takeOut={takeOut} /> })),
    ...sheet.entries.map((e) => ({ at: e.at, row: <EntryRow key={e.key} entry={e} takeOut={takeOut} /> })),
  ].sort((a, b) => a.at - b.at);
  return (
    <section>
      <h2>{say.entriesHead}</h2>
      {rows.length === 0 && !sheet.quote && <p class="job-quiet">{say.nothing}</p>}
      {rows.map(({ row }) => row)}
      {sheet.quote && <QuoteRow quote={sheet.quote} />}
    </section>
  );
}

function searchTime(search: KeptSearch): number {
  return Math.min(...Object.values(search.given).map((g) => g.at), Number.MAX_SAFE_INTEGER);
}

interface RowProps {
  readonly at: number;
  readonly title: string;
  readonly link: string;
  readonly onTakeOut?: (() => void) | undefined;
  readonly children: ComponentChildren;
}

function Row({ at, title, link, onTakeOut, children }: RowProps) {
  return (
    <section class="job-entry">
      <time data-day={isToday(at) ? dayOf(at) : undefined}>{clock(at)}</time>
      <div>
        <h3>{title}</h3>
        {children}
      </div>
      <div class="job-entry-acts no-print">
        {link && <a href={siteLink(link)}>{say.openPage}</a>}
        {onTakeOut && (
          <button type="button" class="job-plain" onClick={onTakeOut}>
            {say.takeOut}
            <span class="spoken"> {title}</span>
          </button>
        )}
      </div>
    </section>
  );
}

/** Hour and minute of the day it was; a day of its own when it was not today. Paper names the day either way. */
function clock(at: number): string {
  if (at <= 0 || at >= Number.MAX_SAFE_INTEGER) return '';
  const time = new Intl.DateTimeFormat('en', { hour: 'numeric', minute: '2-digit' }).format(new Date(at));
  return isToday(at) ? time : `${dayOf(at)}, ${time}`;
}

function isToday(at: number): boolean {
  return new Date(at).toDateString() === new Date().toDateString();
}

function dayOf(at: number): string {
  return new Intl.DateTimeFormat('en', { month: 'short', day: 'numeric' }).format(new Date(at));
}

function SearchRow({ search, takeOut }: { readonly search: KeptSearch; readonly takeOut: Props['takeOut'] }) {
  const title = say.fault(search.title);
  const given = Object.entries(search.given).sort(([, a], [, b]) => a.at - b.at);
  return (
    <Row
      at={searchTime(search)}
      title={title}
      link={`/faults/${search.fault}/`}
      onTakeOut={() => takeOut(search.key, title)}
    >
      <p>
        {given.map(([check, g]) => (
          <>
            {g.name}: <b key={check}>{say.gave[g.is]}</b>.{' '}
          </>
        ))}
        {Object.values(search.ruledOut).map((name) => `${say.notIt(name)} `)}
        {search.was && <b>{say.was(search.was.name, percent(search.was.chance))}</b>}
      </p>
    </Row>
  );
}

function EntryRow({ entry, takeOut }: { readonly entry: KeptEntry; readonly takeOut: Props['takeOut'] }) {
  return (
    <Row at={entry.at} title={entry.title} link={entry.link} onTakeOut={() => takeOut(entry.key, entry.title)}>
      {entry.sentence && <p class="job-sentence">{entry.sentence}</p>}
      <Lines lines={entry.outcomes} />
      <Lines lines={entry.inputs} quiet />
      {entry.edition && <p class="job-quiet">{say.worked(entry.edition)}</p>}
    </Row>
  );
}

function Lines({ lines, quiet = false }: { readonly lines: readonly EntryLine[]; readonly quiet?: boolean }) {
  if (lines.length === 0) return null;
  return (
    <p class={quiet ? 'job-quiet' : undefined}>
      {lines.map(({ label, text, from }, i) => (
        <>
          {i > 0 && ' · '}
          {label} <b class="num">{text}</b>
          {from && ` (${from})`}
        </>
      ))}
    </p>
  );
}

function QuoteRow({ quote }: { readonly quote: KeptQuote }) {
  return (
    <Row at={0} title={say.quote} link={quote.link}>
      <p class="job-sentence">{quote.sentence}</p>
    </Row>
  );
}
