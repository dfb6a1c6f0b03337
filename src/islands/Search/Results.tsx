/** What was found, or what to try when nothing was. */
import type { RefObject } from 'preact';
import type { Found } from './use-search.ts';
import type { SearchWords } from '../../words/index.ts';

interface Props {
  found: Found;
  list: RefObject<HTMLUListElement>;
  words: SearchWords;
  showMore: () => void;
}

export function Results({ found, list, words, showMore }: Props) {
  if (found.total === 0)
    return (
      <ul class="find-help">
        {words.help.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    );
  return (
    <>
      <ul class="find-results" ref={list}>
        {found.hits.map((hit) => (
          <li key={hit.address}>
            <a href={hit.address}>
              <span class="find-title">{hit.title}</span>
              {hit.part !== '' && <span class="find-kind">{hit.part}</span>}
              <span class="find-excerpt">
                {hit.excerpt.map((run) => (run.marked ? <mark>{run.text}</mark> : run.text))}
              </span>
            </a>
          </li>
        ))}
      </ul>
      {found.total > found.hits.length && (
        <button type="button" class="button" onClick={showMore}>
          {words.more}
        </button>
      )}
    </>
  );
}
