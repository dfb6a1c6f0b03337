/** The state of one search: term, reader, what was found. Answers that come late are dropped. */
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Reader } from '../../browser/search/contract.ts';
import { openSearch } from '../../browser/search/open.ts';
import { toHit, type Hit } from './found.ts';

export interface Found {
  /** What was looked for; the box may already hold more. */
  readonly term: string;
  readonly total: number;
  readonly hits: readonly Hit[];
  readonly missing: readonly string[];
}

export type Stage = 'idle' | 'waking' | 'done' | 'broken';

const page = 8;
const pause = 180;

async function findPages(text: string, reader: Reader | undefined, limit: number): Promise<Found> {
  const { total, hits, missing } = await (await openSearch()).find(text, { reader, limit });
  return { term: text, total, hits: hits.map(toHit), missing };
}

export function useSearch() {
  const [term, setTerm] = useState('');
  const [reader, setReader] = useState<Reader | ''>('');
  const [most, setMost] = useState(page);
  const [stage, setStage] = useState<Stage>('idle');
  const [found, setFound] = useState<Found>();
  const asked = useRef(0);

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
    if (text === '') {
      setFound(undefined);
      setStage((s) => (s === 'broken' ? s : 'idle'));
      return;
    }
    const timer = setTimeout(() => {
      setStage((s) => (s === 'done' ? s : 'waking'));
      findPages(text, reader || undefined, most).then(
        (result) => {
          if (mine !== asked.current) return;
          setFound(result);
          setStage('done');
        },
        () => mine === asked.current && setStage('broken'),
      );
    }, pause);
    return () => clearTimeout(timer);
  }, [term, reader, most]);

  return {
    term,
    reader,
    stage,
    found,
    change: (text: string) => {
      setMost(page);
      setTerm(text);
    },
    choose: setReader,
    showMore: () => setMost((n) => n + page),
  };
}
