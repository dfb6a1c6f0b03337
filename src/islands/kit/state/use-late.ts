/** A value that follows its source once that has stood still: for what is looked at after typing, not during it. */
import { useEffect, useRef, useState } from 'preact/hooks';

/** Longer than the gap between two keys of somebody typing figures [ms]. */
const pause = 150;

export interface Late<T> {
  readonly value: T;
  /** Takes over the newest value now: before printing, say. */
  readonly flush: () => void;
}

export function useLate<T>(newest: T, live: boolean): Late<T> {
  const [value, setValue] = useState(newest);
  const now = useRef(newest);
  now.current = newest;
  useEffect(() => {
    if (value === newest) return;
    if (!live) {
      setValue(newest);
      return;
    }
    const timer = setTimeout(() => setValue(newest), pause);
    return () => clearTimeout(timer);
    // The value itself must not start the pause anew.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [newest, live]);
  return { value, flush: () => setValue(now.current) };
}
