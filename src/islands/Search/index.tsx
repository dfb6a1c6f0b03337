/** The search box: results as you type, arrow keys between them, Escape back to the box. */
import { useEffect, useId, useRef, useState } from 'preact/hooks';
import { Results } from './Results.tsx';
import { useSearch } from './use-search.ts';
import { searchWords, type Lang } from '../../words/index.ts';

interface Props {
  lang: Lang;
}

const readersEn = ['', 'customer', 'mechanic'] as const;

export default function Search({ lang }: Props) {
  const words = searchWords[lang];
  const id = useId();
  const [live, setLive] = useState(false);
  useEffect(() => setLive(true), []);
  const { term, reader, stage, found, change, choose, showMore } = useSearch();
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

  const missed = found && found.total > 0 ? found.missing : [];
  const said =
    stage === 'broken'
      ? import.meta.env.DEV
        ? words.notBuilt
        : words.broken
      : stage === 'waking'
        ? words.waking
        : !found || stage !== 'done'
          ? ''
          : found.total === 0
            ? words.none(found.term)
            : missed.length > 0
              ? words.nearest(missed.join(' '))
              : words.found(found.total, found.term);

  return (
    <form class="find" role="search" onSubmit={(e) => e.preventDefault()} onKeyDown={move}>
      <label for={id}>{words.label}</label>
      <div class="find-row">
        <input
          ref={box}
          id={id}
          type="search"
          name="q"
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
          {readersEn.map((r) => (
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
        {said}
      </p>
      {found && <Results found={found} list={list} words={words} showMore={showMore} />}
    </form>
  );
}
