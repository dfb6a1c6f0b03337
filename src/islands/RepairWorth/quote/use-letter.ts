/**
 * The words for the quote's paper, kept on this device with their ticket: no reload and no other ticket takes them, and
 * the job sheet names the quote.
 */
import { useEffect, useLayoutEffect, useState } from 'preact/hooks';
import {
  bench,
  load,
  ofTicket,
  quoteKind,
  save,
  takeOut,
  watch,
  watchBench,
  type KeptQuote,
} from '../../../browser/device/index.ts';
import { today } from '../../kit/index.ts';
import { emptyLetter, type Letter } from './letter.ts';

/** @param link page with the quote's figures, from the root of the site */
export function useLetter(link: string) {
  const [ticket, setTicket] = useState(() => bench().ticket);
  const [typed, setTyped] = useState<KeptQuote['typed']>({});
  const place = ofTicket(quoteKind, ticket);
  useEffect(() => watchBench((now) => setTicket(now.ticket)), []);
  useLayoutEffect(() => {
    const read = () => setTyped(load(place)?.typed ?? {});
    read();
    return watch(place.key, read);
    // The place follows from the ticket.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [ticket]);

  const usual = { ...emptyLetter(today()), language: '' };
  const letter: Letter = Object.assign(emptyLetter(today()), typed);

  /** A quote without a word of its own is not kept; nor is the day it happens to be. */
  function set(part: Partial<Letter & { readonly language: string }>): void {
    const kept = load(place);
    const next: KeptQuote['typed'] = { ...usual, ...kept?.typed, ...part };
    setTyped(next);
    const own = Object.entries(usual).some(([key, text]) => (next[key] ?? '') !== text);
    if (own) save(place, { sentence: '', link, ...kept, typed: next });
    else takeOut([place.key]);
  }

  /** What the job sheet says of a quote that is kept. */
  function say(sentence: string): void {
    const kept = load(place);
    if (kept && kept.sentence !== sentence) save(place, { ...kept, sentence });
  }

  return { letter, language: typed['language'] ?? '', set, say };
}
