/** Texts begun in a page's boxes and not yet handed over, kept in this window while they are typed. */
import { useEffect, useState } from 'preact/hooks';
import { begun, keepBegun, type Texts } from '../../../browser/begun.ts';

type Change<T> = (part: Partial<T>) => void;

/** @param empty what the boxes hold while nothing is typed; the same object for as long as the page lives */
export function useBegun<T extends Texts>(name: string, empty: T): readonly [T, Change<T>] {
  const [texts, setTexts] = useState(empty);
  // Read after the first paint, which must equal the server's.
  useEffect(() => setTexts({ ...empty, ...begun(name) }), [name, empty]);
  const change: Change<T> = (part) =>
    setTexts((before) => {
      const now = { ...before, ...part };
      keepBegun(name, Object.fromEntries(Object.entries(now).filter(([key, text]) => text !== empty[key])));
      return now;
    });
  return [texts, change];
}
