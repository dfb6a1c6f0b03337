/** The state of one search: term, reader, what was found. Answers that come late are dropped. */
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
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
/** Between two keys: an answer to half a word is not read. */
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
  /** A question that came whole, in the address or pasted or spoken, is not waited for. */
  const whole = useRef(false);

  // The address is read only after the first rendering, which must equal the server's.
  useLayoutEffect(() => {
    const query = new URLSearchParams(location.search).get('q');
    if (query) {
      whole.current = true;
      setTerm(query);
    }
    // Woken ahead of the first key, since opening the index takes a moment.
    openSearch()
      .then((engine) => engine.ready())
      .catch(() => setStage('broken'));
  }, []);

  useLayoutEffect(() => {
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
    const begin = () => {
      setStage((s) => (s === 'done' ? s : 'waking'));
      look().catch(() => stale() || setStage('broken'));
    };
    if (whole.current) {
      whole.current = false;
      begin();
      return;
    }
    const timer = setTimeout(begin, pause);
    return () => clearTimeout(timer);
  }, [term, reader, most]);

  return {
    term,
    reader,
    stage,
    found,
    elsewhere,
    change: (text: string) => {
      whole.current = text.length > term.length + 1;
      setMost(page);
      setTerm(text);
    },
    choose: (choice: Reader | '') => {
      whole.current = true;
      setReader(choice);
    },
    showMore: () => {
      whole.current = true;
      setMost((n) => n + page);
    },
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
