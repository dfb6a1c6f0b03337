/** Sheets as files, the other open sheets, and what was set aside. */
import { useRef, useState } from 'preact/hooks';
import { setAsides, takeOut, textsFrom, ticketKeys } from '../../browser/device/index.ts';
import { siteLink } from '../../browser/site-link.ts';
import { sheetWords as say } from '../../words/sheet.ts';
import { download } from '../kit/take-away/download.ts';
import { compare, fileText, readFile, sheetOf, takeIn, type Comparison, type FiledSheet } from './file.ts';

interface Props {
  readonly live: boolean;
  readonly ticket: string;
  readonly others: readonly string[];
}

export function Files({ live, ticket, others }: Props) {
  const chooser = useRef<HTMLInputElement>(null);
  const [said, setSaid] = useState('');
  const [asked, setAsked] = useState<{ readonly sheets: readonly FiledSheet[]; readonly found: Comparison }>();
  const [asides, setAsidesShown] = useState(() => 0);

  const save = (tickets: readonly string[], name: string) =>
    download(name, 'json', fileText(tickets.map(sheetOf), new Date().toISOString()));

  async function open(): Promise<void> {
    const file = chooser.current?.files?.[0];
    if (!file) return;
    const read = readFile(await file.text());
    if (chooser.current) chooser.current.value = '';
    if ('problem' in read) return setSaid(say.file[read.problem]);
    const found = compare(read.sheets);
    if (found.differing.length > 0) return setAsked({ sheets: read.sheets, found });
    takeIn(found.fresh);
    setSaid(found.fresh.length === 0 ? say.file.same : say.file.read(read.sheets.length));
  }

  function settle(keep: 'here' | 'file' | 'both' | 'neither'): void {
    if (!asked) return;
    const { sheets, found } = asked;
    setAsked(undefined);
    if (keep === 'neither') return setSaid(say.file.left);
    if (keep === 'both') {
      const taken = new Set(others);
      const copies = sheets.map((sheet) => {
        let name = say.file.copyOf(sheet.ticket);
        while (taken.has(name)) name += "'";
        taken.add(name);
        return { ...sheet, ticket: name };
      });
      takeIn(compare(copies).fresh);
    } else takeIn(keep === 'file' ? [...found.fresh, ...found.differing] : found.fresh);
    setSaid(say.file.read(sheets.length));
  }

  return (
    <section class="job-files no-print">
      <h2>{say.others}</h2>
      <ul class="plain job-others">
        {others.map((other) => (
          <li key={other}>
            <a
              href={siteLink(`/job-sheet/?ticket=${encodeURIComponent(other)}`)}
              aria-current={other === ticket ? 'page' : undefined}
            >
              {other || say.unnumbered}
            </a>
          </li>
        ))}
        {others.length === 0 && <li>{say.none}</li>}
      </ul>
      <p class="job-acts">
        <button type="button" class="job-plain" disabled={!live} onClick={() => save([ticket], `job sheet ${ticket}`)}>
          {say.save}
        </button>
        <button type="button" class="job-plain" disabled={!live} onClick={() => save(others, 'job sheets')}>
          {say.saveAll}
        </button>
        <button type="button" class="job-plain" disabled={!live} onClick={() => chooser.current?.click()}>
          {say.open}
        </button>
        <input
          ref={chooser}
          type="file"
          accept=".json,application/json"
          hidden
          aria-label={say.open}
          onChange={() => void open()}
        />
      </p>
      <p class="job-said" role="status">
        {said}
      </p>
      {asked && (
        <div class="job-asked" role="alertdialog" aria-label={say.open}>
          <p>
            {say.file.differs(
              asked.found.differing.length,
              asked.found.tickets.map((t) => t || say.unnumbered).join(', '),
            )}
          </p>
          <p class="job-acts">
            {(
              [
                ['here', say.file.keepHere],
                ['file', say.file.keepFile],
                ['both', say.file.keepBoth],
                ['neither', say.file.cancel],
              ] as const
            ).map(([keep, label]) => (
              <button key={keep} type="button" class="job-plain" onClick={() => settle(keep)}>
                {label}
              </button>
            ))}
          </p>
        </div>
      )}
      <SetAside key={asides} live={live} onChange={() => setAsidesShown(asides + 1)} />
    </section>
  );
}

function SetAside({ live, onChange }: { readonly live: boolean; readonly onChange: () => void }) {
  const list = live ? setAsides() : [];
  if (list.length === 0) return null;
  return (
    <>
      <h2>{say.asides}</h2>
      <p class="job-quiet">{say.asidesSay}</p>
      <ul class="plain job-asides">
        {list.map(({ aside, key, at }) => (
          <li key={aside}>
            <span>
              {say.asideOf(nameOf(key), new Date(at).toLocaleString('en', { dateStyle: 'medium', timeStyle: 'short' }))}
            </span>
            <button
              type="button"
              class="job-plain"
              onClick={() => download(`set aside ${nameOf(key)}`, 'json', textsFrom(aside)[0]?.[1] ?? '')}
            >
              {say.asideSave}
            </button>
            <button
              type="button"
              class="job-plain"
              onClick={() => {
                takeOut([aside]);
                onChange();
              }}
            >
              {say.asideDelete}
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}

/** "entry of a sheet, ticket 1432". */
function nameOf(key: string): string {
  const parts = key.startsWith(ticketKeys()) ? key.slice(ticketKeys().length).split('/').map(decodeURIComponent) : [];
  const [ticket = '', kind = ''] = parts;
  const kindName = say.kinds[kind || (key.split('/')[2] ?? '')] ?? key;
  return ticket ? `${kindName}, ${say.ofTicket(ticket)}` : kindName;
}
