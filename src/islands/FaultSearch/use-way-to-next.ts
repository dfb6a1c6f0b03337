/**
 * From an answer to what comes of it: once the plan of the newest answers stands, the focus goes to what is to be done
 * now. Who has moved on meanwhile is not taken away from there; what is to be done is then only said, once.
 */
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';

/** @param turns counts the answers given on this page @param stale the plan of the newest is still being made */
export function useWayToNext(turns: number, stale: boolean) {
  const heading = useRef<HTMLHeadingElement>(null);
  const from = useRef<Element | null>(null);
  const reached = useRef(0);
  const [said, setSaid] = useState('');
  // Where the focus is as the answer is given.
  useLayoutEffect(() => {
    from.current = document.activeElement;
    setSaid('');
  }, [turns]);
  useEffect(() => {
    if (stale || reached.current === turns) return;
    reached.current = turns;
    const at = document.activeElement;
    if (at === null || at === document.body || at === from.current) heading.current?.focus({ preventScroll: true });
    else setSaid(heading.current?.textContent ?? '');
  }, [turns, stale]);
  return { heading, said };
}
