/** On a phone the answer in one line, in view while the boxes are; it leads to the whole of it. */
import type { Value } from '../../../core/contract/result.ts';
import { say } from '../../../words/kit.ts';
import { isMeasured, readingOf, readingText, verdictText, type Reader } from '../state/reading.ts';
import { markOf, sayingOf } from '../state/saying.ts';
import type { Worked } from '../state/use-calculation.ts';
import { mainOf } from '../state/main-values.ts';

interface Props {
  readonly id: string;
  readonly worked: Worked | undefined;
  readonly stale: boolean;
  readonly reader: Reader;
}

export function AnswerLine({ id, worked, stale, reader }: Props) {
  const said = worked && !stale ? shortAnswer(worked, reader) : { text: '…', stop: false };
  return (
    <a class={said.stop ? 'calc-line calc-line-stop' : 'calc-line'} href={`#${id}-answer`}>
      <span>{said.text}</span>
      <i>
        {worked && markOf(worked).text}
        <br />
        {say.toAnswerMark} ↓
      </i>
    </a>
  );
}

function shortAnswer(worked: Worked, reader: Reader): { readonly text: string; readonly stop: boolean } {
  const main = mainOf(worked.answer.values);
  const saying = sayingOf(worked);
  const stop = main.find((v) => v.kind === 'verdict' && v.level === 'stop' && saying(v) === 'said');
  if (stop?.kind === 'verdict') return { text: firstSentence(verdictText(stop, reader)), stop: true };
  const figure = main.find((v) => v.kind !== 'verdict' && v.kind !== 'table');
  if (figure) return { text: figureText(figure, reader), stop: false };
  const verdict = main.find((v) => v.kind === 'verdict' && saying(v) !== 'held-back');
  return { text: verdict?.kind === 'verdict' ? firstSentence(verdictText(verdict, reader)) : say.answer, stop: false };
}

function figureText(value: Value, reader: Reader): string {
  if (isMeasured(value)) return `${value.label}: ${readingText(readingOf(value, value.value, reader))}`;
  return value.kind === 'text' ? `${value.label}: ${value.value}` : value.label;
}

/** Up to the first full stop or colon that ends a clause; a decimal point is none. */
function firstSentence(text: string): string {
  return text.split(/[.:;](?=\s|$)/)[0] ?? text;
}
