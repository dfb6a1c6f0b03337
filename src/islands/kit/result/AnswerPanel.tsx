/** What comes out, in the order it is wanted: finding, cautions, picture, the rest. */
import type { ComponentType } from 'preact';
import type { Value } from '../../../core/contract/result.ts';
import type { DrawingProps } from '../drawing/props.ts';
import type { IslandProps } from '../state/props.ts';
import { answerToDraw, sayingOf } from '../state/saying.ts';
import type { Worked } from '../state/use-calculation.ts';
import { say } from '../../../words/index.ts';
import { Cautions } from './Cautions.tsx';
import { MainValues } from './MainValues.tsx';
import { OtherValues } from './OtherValues.tsx';
import { Still } from './Still.tsx';
import type { Reader } from '../state/reading.ts';

interface Props {
  readonly drawing: ComponentType<DrawingProps> | undefined;
  readonly page: IslandProps;
  readonly worked: Worked;
  readonly reader: Reader;
  readonly onConfirm?: ((keys: readonly string[]) => void) | undefined;
}

/** A topic that marks nothing as main shows its first value large. */
export function mainOf(values: readonly Value[]): readonly Value[] {
  const marked = values.filter((v) => v.main && v.kind !== 'table');
  return marked.length > 0 ? marked : values.filter((v) => v.kind !== 'table').slice(0, 1);
}

export function AnswerPanel({ drawing: Drawing, page, worked, reader, onConfirm }: Props) {
  const { answer, inputs } = worked;
  const main = mainOf(answer.values);
  const others = answer.values.filter((v) => !main.includes(v));
  const saying = sayingOf(worked);
  return (
    <>
      <MainValues values={main} saying={saying} reader={reader} sources={page.sources} />
      <Still id={page.id} worked={worked} compact={page.compact === true} onConfirm={onConfirm} />
      <Cautions cautions={answer.cautions} hazards={page.hazards} />
      {!page.compact && Drawing && (
        <Drawing id={`${page.id}-drawing`} answer={answerToDraw(worked)} inputs={inputs} reader={reader} />
      )}
      {!page.compact && others.length > 0 && (
        <section class="calc-others" aria-label={say.alsoFound}>
          <OtherValues values={others} saying={saying} reader={reader} sources={page.sources} />
        </section>
      )}
    </>
  );
}
