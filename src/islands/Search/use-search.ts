/** The state of one search: term, reader, what was found. Answers that come late are dropped. */
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Elsewhere, Found as EngineFound, Reader } from '../../browser/search/contract.ts';
import { openSearch } from '../../browser/search/open.ts';
import { toHit, type Hit } from './found.ts';

export interface Found extends Omit<EngineFound, 'hits' | 'certainty'> {
  /** What was looked for; the box may already hold more. */
  readonly term: string;
  readonly hits: readonly Hit[];
}

export type Stage = 'idle' | 'waking' | 'done' | 'broken';

const page = 8;
const pause = 120;

export function useSearch() {
  const [term, setTerm] = useState('');
  const [reader, setReader] = useState<Reader | ''>('');
  const [most, setMost] = useState(page);
  const [stage, setStage] = useState<Stage>('idle');
  const [found, setFound] = useState<Found>();
  const [elsewhere, setElsewhere] = useState<Elsewhere>();
  const asked = useRef(0);
  const read = useRef(false);

  // The address is read only after the first paint, which must equal the server's.
  useEffect(() => {
    const query = new URLSearchParams(location.search).get('q');
    if (query) setTerm(query);
    // Woken ahead of the first key, since opening the index takes a moment.
    openSearch()
      .then((engine) => engine.ready())
      .catch(() => setStage('broken'));
  }, []);

  useEffect(() => {
    const text = term.trim();
    asked.current += 1;
    const mine = asked.current;
    const stale = () => mine !== asked.current;
    if (read.current || text !== '') keepInAddress(text);
    read.current = true;
    if (text === '') {
      setFound(undefined);
      setElsewhere(undefined);
      setStage((s) => (s === 'broken' ? s : 'idle'));
      return;
    }
    const look = async () => {
      const engine = await openSearch();
      const { hits, certainty, ...rest } = await engine.find(text, { reader: reader || undefined, limit: most });
      if (stale()) return;
      setFound({ term: text, hits: hits.map(toHit), ...rest });
      setStage('done');
      const other = await engine.elsewhere(text, certainty);
      if (!stale()) setElsewhere(other);
    };
    const timer = setTimeout(() => {
      setStage((s) => (s === 'done' ? s : 'waking'));
      look().catch(() => stale() || setStage('broken'));
    }, pause);
    return () => clearTimeout(timer);
  }, [term, reader, most]);

  return {
    term,
    reader,
    stage,
    found,
    elsewhere,
    change: (text: string) => {
      setMost(page);
      setTerm(text);
    },
    choose: setReader,
    showMore: () => setMost((n) => n + page),
  };
}

/** The question stays in the address, so that it can be sent, and is there again after a reload. */
function keepInAddress(text: string): void {
  const address = new URL(location.href);
  if (text === '') address.searchParams.delete('q');
  else address.searchParams.set('q', text);
  if (address.href === location.href) return;
  try {
    history.replaceState(history.state, '', address);
  } catch {
    // A browser may forbid it for a page opened from disk; the search works the same.
  }
}
