/** The one thing to do now; or what was found, and how to make sure of it. */
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { PlannedCheck } from '../../core/topics/fault-order/index.ts';
import { siteLink } from '../../browser/site-link.ts';
import { aboutMinutes, aboutMinutesApart, faultWords as say, minutes, percent } from '../../words/fault.ts';
import { CheckBody } from './CheckBody.tsx';
import { Earlier } from './Earlier.tsx';
import type { Answer, Search } from './kept.ts';
import type { PlanNow } from './plan-for.ts';
import type { FaultSearchProps } from './props.ts';
import { useWayToNext } from './use-way-to-next.ts';

interface Props extends FaultSearchProps {
  readonly now: PlanNow;
  /** The plan is of earlier answers; that of the newest is being made. */
  readonly stale: boolean;
  readonly search: Search;
  readonly live: boolean;
  readonly answer: (check: string, is: Answer) => void;
  readonly change: (change: Partial<Search>) => void;
  /** Counts the answers given on this page; the focus follows to what comes next. */
  readonly turns: number;
}

/** An act pressed, shown as such until what comes of it stands. */
interface Pressed {
  readonly label: string;
  /** The count of answers with it. */
  readonly turns: number;
}

export function NextCheck({ now, stale, search, live, answer, change, turns, ...page }: Props) {
  const { plan, model } = now;
  const { heading, said } = useWayToNext(turns, stale);
  const [pressed, setPressed] = useState<Pressed>();

  if (search.was)
    return panel(
      say.was,
      search.was.name,
      <>
        <p>
          {say.likely(percent(search.was.chance))} {say.wasSays}
        </p>
        <p class="fault-quiet">{fixOf(search.was.id)}</p>
        {acts([say.takeBack, () => change({ was: undefined })])}
      </>,
    );
  if (plan.belief.contradiction) return panel(say.search, say.contradiction);
  if (plan.found) {
    const { id, name, chance, how, confirm } = plan.found;
    const lead = how === 'shown' ? say.found : how === 'excluded' ? say.foundOut : say.unchecked;
    return panel(
      lead,
      name,
      <>
        <p>
          {how === 'unchecked' ? say.noDiagnosis : say.likely(percent(chance))} {page.suspects[id]?.why} {fixOf(id)}
        </p>
        {how !== 'unchecked' &&
          acts(
            [say.thatWasIt, () => change({ was: { id, name, chance } })],
            [say.notIt, () => change({ ruledOut: { ...search.ruledOut, [id]: name } })],
          )}
        {confirm && (
          <div class="fault-confirm">
            <p class="fault-quiet">{say.makeSure(minutes(confirm.minutes))}</p>
            <h3>{confirm.name}</h3>
            {body(confirm)}
          </div>
        )}
      </>,
    );
  }
  if (plan.stop?.advised)
    return panel(
      say.search,
      say.stop,
      <>
        <p>{stopSays(plan.stop.minutes, plan.stop.goingOn)}</p>
        {acts([say.goOnLooking, () => change({ goOn: true })])}
      </>,
    );
  if (!plan.next) return panel(say.search, plan.answered === 0 ? say.nothingSeen : say.nothingLeft);
  const { next } = plan;
  const done = Object.keys(search.given).filter((id) => model.checks.some((c) => c.id === id)).length;
  return panel(
    say.nextCheck(Math.min(done + 1, model.checks.length), model.checks.length, minutes(next.minutes)),
    next.name,
    <>
      {body(next)}
      <p class="fault-quiet">{say.why(minutes(next.minutes), percent(next.chanceShows))}</p>
    </>,
  );

  function panel(lead: string, what: string, rest?: ComponentChildren) {
    return (
      <div class="fault-now" id={`${page.id}-next`}>
        <output class="spoken" aria-live="polite">
          {said}
        </output>
        <p class="fault-quiet fault-lead">
          <span class="fault-head">{lead}</span>
          <Earlier live={live} />
        </p>
        <h2 class="fault-what" tabIndex={-1} ref={heading}>
          {what}
        </h2>
        {rest}
      </div>
    );
  }

  function body({ id, name }: PlannedCheck) {
    return (
      <CheckBody
        id={id}
        name={name}
        checks={page.checks}
        cautions={page.cautions}
        live={live}
        given={search.given[id]?.is}
        answer={(is) => answer(id, is)}
      />
    );
  }

  /** What can be done with a finding. It rests on the plan, so it waits for that of the newest answers. */
  function acts(...buttons: readonly (readonly [label: string, press: () => void])[]) {
    return (
      <div class="fault-answers no-print">
        {buttons.map(([label, press]) => (
          <button
            key={label}
            type="button"
            class="fault-answer"
            disabled={!live}
            aria-disabled={stale}
            aria-pressed={(stale && pressed?.label === label && pressed.turns === turns) || undefined}
            onClick={() => {
              if (stale) return;
              setPressed({ label, turns: turns + 1 });
              press();
            }}
          >
            {label}
          </button>
        ))}
      </div>
    );
  }

  function fixOf(id: string) {
    const fix = page.suspects[id]?.fix;
    return fix && <a href={siteLink(fix.path)}>{fix.title}</a>;
  }
}

/** The two figures that decide, so that a reader sees them differ, or that they hardly do. */
function stopSays(out: number, goingOn: number): string {
  const apart = aboutMinutesApart(out, goingOn);
  return apart ? say.stopSays(...apart) : say.stopSaysAsLong(aboutMinutes(out));
}
