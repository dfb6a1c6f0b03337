/** What was found, each line with what it is; or what to try when nothing was. */
import type { RefObject } from 'preact';
import type { Elsewhere, Reader } from '../../browser/search/contract.ts';
import type { Lang } from '../../words/lang.ts';
import { count, fill } from '../../words/say/fill.ts';
import type { SearchWords } from '../../words/search.ts';
import type { Found } from './use-search.ts';

interface Props {
  found: Found;
  elsewhere: Elsewhere | undefined;
  reader: Reader | '';
  list: RefObject<HTMLUListElement>;
  lang: Lang;
  words: SearchWords;
  /** How each other language says that its pages answer better. */
  inOthers: Readonly<Record<string, string>>;
  showMore: () => void;
  showAll: () => void;
}

export function Results({ found, elsewhere, reader, list, lang, words, inOthers, showMore, showAll }: Props) {
  return (
    <>
      {found.offers.map((offer) => {
        const title = offer.foreign ? `${offer.title}${words.inEnglish}` : offer.title;
        const say = offer.filled ? words.offerFilled : words.offerRow;
        return (
          <a key={offer.address} class="find-offer" href={offer.address}>
            {fill(say, { title, figures: offer.said })}
          </a>
        );
      })}
      {found.hidden > 0 && reader !== '' && (
        <p class="find-aside">
          {count(words.hidden, found.hidden, lang, { shown: words[reader] })}{' '}
          <button type="button" onClick={showAll}>
            {words.showAll}
          </button>
        </p>
      )}
      {elsewhere && (
        <p class="find-aside">
          <a href={elsewhere.address} lang={elsewhere.lang} hreflang={elsewhere.lang}>
            {fill(inOthers[elsewhere.lang] ?? '{title}', { title: elsewhere.title })}
          </a>
        </p>
      )}
      {found.total === 0 ? (
        <ul class="find-help">
          {words.help[reader].map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      ) : (
        <ul class="find-results" ref={list}>
          {found.hits.map((hit) => (
            <li key={hit.address}>
              <a href={hit.address}>
                <span class="find-title">{hit.title}</span>
                <span class="find-kind">
                  {words.kinds[hit.kind]}
                  {hit.part !== '' && `: ${hit.part}`}
                </span>
                <span class="find-excerpt">
                  {hit.excerpt.map((run) => (run.marked ? <mark>{run.text}</mark> : run.text))}
                </span>
              </a>
            </li>
          ))}
        </ul>
      )}
      {found.total > found.hits.length && (
        <button type="button" class="button" onClick={showMore}>
          {words.more}
        </button>
      )}
    </>
  );
}
