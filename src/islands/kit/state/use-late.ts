/**
 * Values that follow their source once that has stood still: for what is looked at after typing, not during it. Each
 * part of the page takes it over in a task of its own, so that the next key never waits for more than one of them.
 */
import { useEffect, useRef, useState } from 'preact/hooks';

/** Longer than the gap between two keys of somebody typing figures [ms]. */
const pause = 150;

export interface Late<T> {
  /** One for each part, the first the first to follow. */
  readonly values: readonly T[];
  /** Gives all parts the newest value now: before printing, say. */
  readonly flush: () => void;
}

export function useLate<T>(newest: T, live: boolean, parts: number): Late<T> {
  const [values, setValues] = useState<readonly T[]>(() => Array<T>(parts).fill(newest));
  const now = useRef(newest);
  now.current = newest;
  // One and the same act for as long as the page lives.
  const { current: flush } = useRef(() => setValues(Array<T>(parts).fill(now.current)));
  useEffect(() => {
    if (values.every((value) => value === newest)) return;
    if (!live) {
      flush();
      return;
    }
    let timer = setTimeout(follow, pause, 0);
    function follow(part: number): void {
      setValues((before) => before.map((value, i) => (i <= part ? newest : value)));
      if (part + 1 < parts) timer = setTimeout(follow, 0, part + 1);
    }
    return () => clearTimeout(timer);
    // The values themselves must not start the pause anew.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [newest, live]);
  return { values, flush };
}
