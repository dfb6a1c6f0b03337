/** What comes out, in the order it is wanted: finding, cautions, picture, the rest. */
import type { ComponentType } from 'preact';
import type { Value } from '../../../core/contract/result.ts';
import type { DrawingProps } from '../drawing/props.ts';
import type { IslandProps } from '../state/props.ts';
import type { Worked } from '../state/use-calculation.ts';
import { say } from '../../../words/index.ts';
import { Cautions } from './Cautions.tsx';
import { MainValues } from './MainValues.tsx';
import { OtherValues } from './OtherValues.tsx';
import type { Reader } from '../state/reading.ts';

interface Props {
  readonly drawing: ComponentType<DrawingProps> | undefined;
  readonly page: IslandProps;
  readonly worked: Worked;
  readonly reader: Reader;
}

/** A topic that marks nothing as main shows its first value large. */
export function mainOf(values: readonly Value[]): readonly Value[] {
  const marked = values.filter((v) => v.main && v.kind !== 'table');
  return marked.length > 0 ? marked : values.filter((v) => v.kind !== 'table').slice(0, 1);
}

export function AnswerPanel({ drawing: Drawing, page, worked, reader }: Props) {
  const { answer, inputs } = worked;
  const main = mainOf(answer.values);
  const others = answer.values.filter((v) => !main.includes(v));
  return (
    <>
      <MainValues values={main} reader={reader} sources={page.sources} />
      <Cautions cautions={answer.cautions} hazards={page.hazards} />
      {!page.compact && Drawing && (
        <Drawing id={`${page.id}-drawing`} answer={answer} inputs={inputs} reader={reader} />
      )}
      {!page.compact && others.length > 0 && (
        <section class="calc-others" aria-label={say.alsoFound}>
          <OtherValues values={others} reader={reader} sources={page.sources} />
        </section>
      )}
    </>
  );
}
