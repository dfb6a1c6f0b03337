/** Everything that may follow the answer a moment later: the drawing and the ways on beside it, all figures and the working below. */
import type { ComponentChildren, ComponentType } from 'preact';
import { useState } from 'preact/hooks';
import type { DrawingProps } from '../drawing/props.ts';
import type { IslandProps } from '../state/props.ts';
import type { Reader } from '../state/reading.ts';
import { answerToDraw, sayingOf } from '../state/saying.ts';
import type { Worked } from '../state/use-calculation.ts';
import { say } from '../../../words/kit.ts';
import { CarryLinks } from './CarryLinks.tsx';
import { mainOf } from '../state/main-values.ts';
import { OtherValues } from './OtherValues.tsx';
import { Working } from './Working.tsx';

interface Props {
  readonly page: IslandProps;
  readonly worked: Worked;
  readonly reader: Reader;
}

export function Side({
  page,
  worked,
  reader,
  drawing: Drawing,
}: Props & { readonly drawing?: ComponentType<DrawingProps> | undefined }) {
  return (
    <div class={worked.pencil > 0 ? 'calc-side calc-pencil' : 'calc-side'}>
      {worked.missing.length > 0 && <p class="calc-nothing">{say.drawingLater}</p>}
      {Drawing && worked.missing.length === 0 && (
        <Drawing id={`${page.id}-drawing`} answer={answerToDraw(worked)} inputs={worked.inputs} reader={reader} />
      )}
      {worked.missing.length === 0 && <CarryLinks carries={page.carries ?? []} from={page.name} worked={worked} />}
    </div>
  );
}

interface BelowProps extends Props {
  readonly live: boolean;
  /** Sheets to print and files to save. */
  readonly desk: ComponentChildren;
  /** Brings on what was to come a moment later: a press on a sheet's button must find the newest figures. */
  readonly onReach: () => void;
}

export function Below({ page, worked, reader, live, desk, onReach }: BelowProps) {
  const { answer } = worked;
  const main = mainOf(answer.values);
  const others = answer.values.filter((v) => !main.includes(v));
  return (
    <div class={worked.pencil > 0 ? 'calc-below calc-pencil' : 'calc-below'}>
      {others.length > 0 && (
        <section class="calc-others" aria-label={say.allFigures}>
          <h2 class="calc-head">{say.allFigures}</h2>
          <OtherValues values={others} saying={sayingOf(worked)} reader={reader} sources={page.sources} />
        </section>
      )}
      {desk && (
        <div class="calc-take-away" onPointerDown={onReach} onKeyDown={onReach}>
          {desk}
        </div>
      )}
      {answer.working.length > 0 && <FoldedWorking page={page} worked={worked} live={live} />}
    </div>
  );
}

/** The working is long and seldom read: while scripts run it is made when it is opened, and prints when it is open. */
function FoldedWorking({
  page,
  worked,
  live,
}: {
  readonly page: IslandProps;
  readonly worked: Worked;
  readonly live: boolean;
}) {
  const [open, setOpen] = useState(false);
  const shown = open || !live;
  return (
    <details
      class="calc-working"
      open={shown}
      data-pagefind-ignore="index"
      onToggle={(e) => setOpen(e.currentTarget.open)}
    >
      <summary class="calc-head" id={`${page.id}-working`}>
        <b>{say.working}</b>, {say.workingSteps(worked.answer.working.length)}
      </summary>
      {shown && <Working steps={worked.answer.working} markup={page.markup} sources={page.sources} />}
    </details>
  );
}
