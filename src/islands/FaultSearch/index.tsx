/** Working down a complaint: the next check, who is left, every check. Planned again after every answer, kept by ticket. */
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { bench, save, takeOut, watch, watchBench, type Bench } from '../../browser/device/index.ts';
import { faultWords as say } from '../../words/fault.ts';
import { Caution } from './Caution.tsx';
import { CheckList } from './CheckList.tsx';
import { keptSearch, nothingYet, searchPlace, type Answer, type Search } from './kept.ts';
import { NextCheck } from './NextCheck.tsx';
import type { FaultSearchProps } from './props.ts';
import { Suspects } from './Suspects.tsx';
import { usePlan } from './use-plan.ts';

export default function FaultSearch(given: FaultSearchProps) {
  // The same object for as long as the page lives.
  const page = useRef(given).current;
  const { id, title } = page;
  const [live, setLive] = useState(false);
  const [on, setOn] = useState<Bench>({ ticket: '', machine: '' });
  const [search, setSearch] = useState<Search>(() => nothingYet(title));
  /** States before each change made on this page, for "Undo". */
  const [before, setBefore] = useState<readonly Search[]>([]);
  const [turns, setTurns] = useState(0);

  // What was kept is read after the first paint, which must equal the server's; at once with the ticket it belongs to.
  useEffect(() => {
    const take = (now: Bench) => {
      setOn(now);
      read(now.ticket);
    };
    take(bench());
    setLive(true);
    return watchBench(take);
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, []);
  useEffect(() => {
    if (!live) return;
    setBefore([]);
    return watch(searchPlace(on.ticket, id).key, () => read(on.ticket));
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [live, on.ticket]);

  function read(ticket: string): void {
    const kept = keptSearch(ticket, id, title);
    // The page hears of its own records too; making it all again would only cost time.
    setSearch((now) => (JSON.stringify(now) === JSON.stringify(kept) ? now : kept));
  }

  function keep(next: Search): void {
    setSearch(next);
    save(searchPlace(on.ticket, id), next);
  }

  function change(part: Partial<Search>): void {
    setBefore([...before, search]);
    setTurns(turns + 1);
    keep({ ...search, ...part });
  }

  function answer(check: string, is: Answer | undefined): void {
    const name = page.model.checks.find((c) => c.id === check)?.name ?? check;
    const others = Object.fromEntries(Object.entries(search.given).filter(([k]) => k !== check));
    change({ given: is ? { ...others, [check]: { is, name, at: Date.now() } } : others });
  }

  function undo(): void {
    const last = before.at(-1);
    if (!last) return;
    setBefore(before.slice(0, -1));
    keep(last);
  }

  function afresh(): void {
    takeOut([searchPlace(on.ticket, id).key]);
    setBefore([...before, search]);
    setSearch(nothingYet(title));
  }

  // What hangs on an act is not made again with every answer: the act stays the same, and does the newest.
  const newest = useRef({ answer, change });
  newest.current = { answer, change };
  const acts = useRef<typeof newest.current>({
    answer: (check, is) => newest.current.answer(check, is),
    change: (part) => newest.current.change(part),
  }).current;
  const { now, stale } = usePlan(page, search, page.kinds[on.machine]);
  const general = useMemo(
    () =>
      page.general.length > 0 && (
        <details class="fault-more">
          <summary>{say.moreCautions(page.general.length)}</summary>
          <div class="fault-cautions">
            {page.general.map((hazard) => {
              const caution = page.cautions[hazard];
              return caution && <Caution key={hazard} caution={caution} />;
            })}
          </div>
        </details>
      ),
    [page],
  );
  const suspects = useMemo(
    () => <Suspects belief={now.plan.belief} live={live} suspects={page.suspects} />,
    [now.plan.belief, live, page],
  );
  const cautions = useMemo(
    () => Object.entries(page.cautions).map(([hazard, caution]) => <Caution key={hazard} caution={caution} />),
    [page],
  );
  const begun = Object.keys(search.given).length + Object.keys(search.ruledOut).length > 0 || search.was !== undefined;

  return (
    <section class="fault" aria-label={say.search} data-live={live ? 'yes' : 'no'} data-stale={stale ? 'yes' : 'no'}>
      <p class="fault-on-paper fault-ticket-paper" data-pagefind-ignore>
        <span>
          {say.ticket}: {on.ticket}
        </span>
        <span>{say.machine}:</span>
        <span>{say.by}:</span>
      </p>
      <div class="fault-look">
        <NextCheck {...page} now={now} stale={stale} search={search} live={live} {...acts} turns={turns} />
        {general}
        {suspects}
      </div>
      <CheckList now={now} search={search} live={live} checks={page.checks} cautions={page.cautions} {...acts} />
      {/* On paper the list comes first, to be worked from; each caution in a line; all of them follow in full, on its back where they are many. */}
      <div class="fault-on-paper fault-cautions">{cautions}</div>
      <p class="fault-acts no-print">
        <button type="button" class="fault-plain" disabled={before.length === 0} onClick={undo}>
          {say.undo}
        </button>
        <button type="button" class="fault-plain" disabled={!begun} onClick={afresh}>
          {say.afresh}
        </button>
        <button type="button" class="fault-plain" disabled={!live} onClick={() => window.print()}>
          {say.print}
        </button>
      </p>
    </section>
  );
}
