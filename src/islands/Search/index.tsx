/** The search box: results as you type, arrow keys between them, Escape back to the box. */
import { useEffect, useId, useRef, useState } from 'preact/hooks';
import { Results } from './Results.tsx';
import { sayWhatHappened } from './said.ts';
import { useSearch } from './use-search.ts';
import type { Lang } from '../../words/lang.ts';
import type { SearchWords } from '../../words/search.ts';

interface Props {
  lang: Lang;
  words: SearchWords;
  /** How each other language of the site says that its pages answer better. */
  elsewhere: Readonly<Record<string, string>>;
}

const readers = ['', 'customer', 'mechanic'] as const;

export default function Search({ lang, words, elsewhere: inOthers }: Props) {
  const id = useId();
  const [live, setLive] = useState(false);
  useEffect(() => setLive(true), []);
  const { term, reader, stage, found, elsewhere, change, choose, showMore } = useSearch();
  const list = useRef<HTMLUListElement>(null);
  const box = useRef<HTMLInputElement>(null);

  function move(event: KeyboardEvent): void {
    const links = [...(list.current?.querySelectorAll<HTMLAnchorElement>('a') ?? [])];
    const at = links.indexOf(document.activeElement as HTMLAnchorElement);
    if (event.key === 'ArrowDown') links[Math.min(at + 1, links.length - 1)]?.focus();
    else if (event.key === 'ArrowUp') (at <= 0 ? box.current : links[at - 1])?.focus();
    else if (event.key === 'Escape') box.current?.focus();
    else return;
    event.preventDefault();
  }

  /** A phone's keyboard covers the results until the box lets go of it. */
  function closeKeyboard(event: Event): void {
    event.preventDefault();
    const first = list.current?.querySelector<HTMLAnchorElement>('a');
    if (first) first.focus({ preventScroll: true });
    else box.current?.blur();
  }

  return (
    <form class="find" role="search" onSubmit={closeKeyboard} onKeyDown={move}>
      <label class="find-label" for={id}>
        {words.label}
      </label>
      <div class="find-row">
        <input
          ref={box}
          id={id}
          type="search"
          name="q"
          enterkeyhint="search"
          autocomplete="off"
          autocapitalize="none"
          spellcheck={false}
          placeholder={words.hint}
          value={term}
          disabled={!live}
          onInput={(e) => change(e.currentTarget.value)}
          aria-describedby={`${id}-said`}
        />
      </div>
      {lang === 'en' && (
        <fieldset class="find-readers">
          <legend>{words.readers}</legend>
          {readers.map((r) => (
            <label key={r}>
              <input
                type="radio"
                name={`${id}-reader`}
                value={r}
                checked={reader === r}
                disabled={!live}
                onChange={() => choose(r)}
              />
              {r === '' ? words.everyone : words[r]}
            </label>
          ))}
        </fieldset>
      )}
      <p class="find-said" id={`${id}-said`} role="status">
        {sayWhatHappened(stage, found, words, lang)}
      </p>
      {found && (
        <Results
          found={found}
          elsewhere={elsewhere}
          reader={reader}
          list={list}
          lang={lang}
          words={words}
          inOthers={inOthers}
          showMore={showMore}
          showAll={() => choose('')}
        />
      )}
    </form>
  );
}
