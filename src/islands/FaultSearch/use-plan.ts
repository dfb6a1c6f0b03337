/**
 * The plan of the newest answers. A long list takes a second or more: what was planned for the answers before stays
 * meanwhile, and is said to be theirs; an answer given before its plan is made lays that plan aside.
 */
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { inSlices, type Underway } from '../../browser/in-slices.ts';
import { toEnd } from '../../core/contract/pieces.ts';
import type { Search } from './kept.ts';
import { planning, type PlanNow } from './plan-for.ts';
import type { FaultSearchProps } from './props.ts';

export interface PlanShown {
  readonly now: PlanNow;
  /** The plan is of earlier answers; that of the newest is being made. */
  readonly stale: boolean;
}

export function usePlan(page: FaultSearchProps, search: Search, kind: string | undefined): PlanShown {
  const wanted = planned(search, kind);
  const [made, setMade] = useState(() => ({ of: wanted, now: toEnd(planning(page, search, kind)) }));
  const underway = useRef<Underway>();
  const stale = made.of !== wanted;
  useLayoutEffect(() => {
    if (!stale) return;
    const work = inSlices(planning(page, search, kind), (now) => setMade({ of: wanted, now }));
    underway.current = work;
    return work.stop;
    // What is wanted names all of the search that counts; the page stays the same for as long as it lives.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [wanted]);
  useEffect(() => {
    const beforePrint = () => underway.current?.finish();
    addEventListener('beforeprint', beforePrint);
    return () => removeEventListener('beforeprint', beforePrint);
  }, []);
  return { now: made.now, stale };
}

/** All that a plan hangs on, as one text to compare. */
function planned({ given, ruledOut, goOn }: Search, kind: string | undefined): string {
  const answers = Object.entries(given)
    .map(([check, { is }]) => `${check} ${is}`)
    .sort();
  return JSON.stringify([answers, Object.keys(ruledOut).sort(), goOn, kind]);
}
