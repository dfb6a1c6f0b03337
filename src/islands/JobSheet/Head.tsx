/** Head of the sheet: whose machine it is and what is wrong with it. */
import type { SheetHead } from '../../browser/device/index.ts';
import { sheetWords as say } from '../../words/sheet.ts';

interface Props {
  readonly head: SheetHead;
  readonly live: boolean;
  /** Name of the saw on the bench, offered while nothing is typed. */
  readonly machine: string;
  readonly set: (part: Partial<SheetHead>) => void;
}

type TextKey = Exclude<keyof SheetHead, 'checks'>;

export function Head({ head, live, machine, set }: Props) {
  const box = (key: TextKey, type: 'text' | 'date' = 'text', hint = '') => (
    <div class="job-box">
      <label for={`job-${key}`}>{say[key as 'machine']}</label>
      <input
        id={`job-${key}`}
        class={head[key] ? 'job-filled' : undefined}
        type={type}
        autocomplete="off"
        maxLength={120}
        placeholder={hint}
        disabled={!live}
        value={head[key]}
        onInput={(e) => set({ [key]: e.currentTarget.value })}
      />
      {head[key] === '' && hint && <span class="job-on-paper">{hint}</span>}
    </div>
  );
  return (
    <section aria-label={say.head}>
      <div class="job-head">
        {box('machine', 'text', machine)}
        {box('customer')}
        {box('takenIn', 'date')}
        {box('takenBy')}
      </div>
      <Words name="complaint" value={head.complaint} live={live} onText={(complaint) => set({ complaint })} />
    </section>
  );
}

interface WordsProps {
  readonly name: 'complaint' | 'notes';
  readonly value: string;
  readonly live: boolean;
  readonly help?: string;
  readonly onText: (text: string) => void;
}

/** A box for free text; on paper the text itself, however long it is. */
export function Words({ name, value, live, help, onText }: WordsProps) {
  return (
    <div class="job-words">
      <label for={`job-${name}`}>{say[name]}</label>
      {help && <p class="job-quiet no-print">{help}</p>}
      <textarea
        id={`job-${name}`}
        class="no-print"
        rows={2}
        maxLength={4000}
        disabled={!live}
        value={value}
        onInput={(e) => onText(e.currentTarget.value)}
      />
      <p class="job-on-paper">{value}</p>
    </div>
  );
}

interface SignProps {
  readonly head: SheetHead;
  readonly live: boolean;
  readonly set: (part: Partial<SheetHead>) => void;
}

/** What is looked at before the machine goes back, and who signs for it. */
export function HandBack({ head, live, set }: SignProps) {
  const held = Object.values(head.checks).includes(false);
  return (
    <section>
      <h2>{say.checksHead}</h2>
      <p class="job-caution">{say.caution}</p>
      <ul class="plain job-checks">
        {Object.entries(say.checks).map(([key, label]) => (
          <li key={key}>
            <fieldset disabled={!live}>
              <legend>{label}</legend>
              {([true, false] as const).map((good) => (
                <label key={String(good)}>
                  <input
                    type="checkbox"
                    checked={head.checks[key] === good}
                    onChange={(e) => {
                      const others = Object.fromEntries(Object.entries(head.checks).filter(([k]) => k !== key));
                      set({ checks: e.currentTarget.checked ? { ...others, [key]: good } : others });
                    }}
                  />
                  {good ? say.yes : say.no}
                </label>
              ))}
            </fieldset>
          </li>
        ))}
      </ul>
      {held && (
        <p class="job-held" role="status">
          {say.holdsBack}
        </p>
      )}
      <div class="job-sign">
        {(['repairedBy', 'hours', 'handedBack'] as const).map((key) => (
          <div class="job-box" key={key}>
            <label for={`job-${key}`}>{say[key]}</label>
            <input
              id={`job-${key}`}
              class={head[key] ? 'job-filled' : undefined}
              type={key === 'handedBack' ? 'date' : 'text'}
              autocomplete="off"
              maxLength={60}
              disabled={!live}
              value={head[key]}
              onInput={(e) => set({ [key]: e.currentTarget.value })}
            />
          </div>
        ))}
      </div>
    </section>
  );
}
