/** Working down a complaint: the next check, who is left, every check. Planned again after every answer, kept by ticket. */
import { useEffect, useMemo, useState } from 'preact/hooks';
import { bench, save, takeOut, watch, watchBench, type Bench } from '../../browser/device/index.ts';
import { faultWords as say } from '../../words/fault.ts';
import { Caution } from './Caution.tsx';
import { CheckList } from './CheckList.tsx';
import { keptSearch, nothingYet, searchPlace, type Answer, type Search } from './kept.ts';
import { NextCheck } from './NextCheck.tsx';
import { planFor } from './plan-for.ts';
import type { FaultSearchProps } from './props.ts';
import { Suspects } from './Suspects.tsx';

export default function FaultSearch(page: FaultSearchProps) {
  const { id, title } = page;
  const [live, setLive] = useState(false);
  const [on, setOn] = useState<Bench>({ ticket: '', machine: '' });
  const [search, setSearch] = useState<Search>(() => nothingYet(title));
  /** States before each change made on this page, for "Undo". */
  const [before, setBefore] = useState<readonly Search[]>([]);
  const [turns, setTurns] = useState(0);

  // What was kept is read after the first paint, which must equal the server's.
  useEffect(() => {
    setOn(bench());
    setLive(true);
    return watchBench(setOn);
  }, []);
  useEffect(() => {
    if (!live) return;
    const read = () => {
      const kept = keptSearch(on.ticket, id, title);
      // The page hears of its own records too; planning the same again would only cost time.
      setSearch((now) => (JSON.stringify(now) === JSON.stringify(kept) ? now : kept));
    };
    setBefore([]);
    read();
    return watch(searchPlace(on.ticket, id).key, read);
  }, [live, on.ticket, id, title]);

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

  const kind = page.kinds[on.machine];
  const { model, checks, suspects, wayOutMinutes, atRest } = page;
  const now = useMemo(
    () => planFor({ model, checks, suspects, wayOutMinutes }, search, kind, atRest),
    [model, checks, suspects, wayOutMinutes, atRest, search, kind],
  );
  const begun = Object.keys(search.given).length + Object.keys(search.ruledOut).length > 0 || search.was !== undefined;

  return (
    <section class="fault" aria-label={say.search} data-live={live ? 'yes' : 'no'}>
      <p class="fault-on-paper fault-ticket-paper" data-pagefind-ignore>
        <span>
          {say.ticket}: {on.ticket}
        </span>
        <span>{say.machine}:</span>
        <span>{say.by}:</span>
      </p>
      <div class="fault-look">
        <NextCheck {...page} now={now} search={search} live={live} answer={answer} change={change} turns={turns} />
        {page.general.length > 0 && (
          <details class="fault-more">
            <summary>{say.moreCautions(page.general.length)}</summary>
            <div class="fault-cautions">
              {page.general.map((hazard) => {
                const caution = page.cautions[hazard];
                return caution && <Caution key={hazard} caution={caution} />;
              })}
            </div>
          </details>
        )}
        <Suspects belief={now.plan.belief} suspects={page.suspects} />
      </div>
      <CheckList
        now={now}
        search={search}
        live={live}
        checks={page.checks}
        cautions={page.cautions}
        answer={answer}
        change={change}
      />
      {/* On paper the list comes first, to be worked from; each caution in a line; all of them follow in full, on its back where they are many. */}
      <div class="fault-on-paper fault-cautions">
        {Object.entries(page.cautions).map(([hazard, caution]) => (
          <Caution key={hazard} caution={caution} />
        ))}
      </div>
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
