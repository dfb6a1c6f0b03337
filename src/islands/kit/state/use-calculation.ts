/** From boxes to answer: reads what was typed, loads the sum evaluator when it is needed, keeps the last good answer. */
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Field, Inputs } from '../../../core/contract/field.ts';
import { judged, type Judged } from '../../../core/contract/judged.ts';
import { filledIn, isPencil, type Entries } from '../../../core/contract/entry.ts';
import type { Read, Wanted } from '../../../core/quantity/index.ts';
import { onlyMissing, partAnswer } from '../../../core/contract/part.ts';
import { readInputs } from '../../../core/contract/read-inputs.ts';
import type { Answer, Problem } from '../../../core/contract/result.ts';
import type { IslandProps } from './props.ts';
import type { TopicParts } from './topic-parts.ts';
import { askedOf, hasOwn, rawOf, unitsRead, type Figures } from './figures.ts';

export interface Worked {
  readonly answer: Answer;
  /** The SI inputs that gave this answer; drawings use them. */
  readonly inputs: Inputs;
  /** Boxes as they stood then, for the list of figures used. */
  readonly figures: Figures;
  readonly asked: readonly Field[];
  /** Which verdicts may be said, and what holds the others back. */
  readonly judged: Judged;
  /** How many of the figures this rests on are nobody's yet. */
  readonly pencil: number;
  /** Boxes still empty that the rest of the answer needs; none where this is the whole of it. */
  readonly missing: readonly string[];
}

export interface Calculation {
  /** The newest answer there is; older than the boxes while `stale`. */
  readonly worked: Worked | undefined;
  readonly stale: boolean;
  readonly problems: readonly Problem[];
  /** "1.1875 in = 30.1625 mm", by field. */
  readonly said: Readonly<Record<string, string>>;
  /** Boxes where one of several readings was taken: the reader must see which. */
  readonly chosen: readonly string[];
}

type ReadSum = (text: string, wanted: Wanted) => Read;

/** Stands in for the evaluator after it failed to come: the box says so, and the next key asks for it again. */
const notLoaded: ReadSum = (text) => ({ ok: false, problem: { code: 'sum-not-loaded', data: { got: text } } });

/** @param active path of the box with the focus: a box emptied to be typed anew takes nothing off the page */
export function useCalculation(
  topic: TopicParts,
  figures: Figures,
  page: IslandProps,
  active: string | undefined,
): Calculation {
  const [sum, setSum] = useState<ReadSum>();
  const [failedFor, setFailedFor] = useState<Entries>();
  const last = useRef<Worked>();
  const series = useRef(figures.series);
  if (series.current !== figures.series) {
    series.current = figures.series;
    last.current = undefined;
  }
  const { entries, system } = figures;

  const evaluator = sum ?? (failedFor === entries ? notLoaded : undefined);
  // What is typed and how it is read decides; the page and the rest of the form's state do not change the answer.
  // eslint-disable-next-line react-hooks/exhaustive-deps
  const now = useMemo(() => calculate(topic, figures, evaluator, page), [topic, entries, system, evaluator]);
  const wantsSum = now === 'needs-sum';
  useEffect(() => {
    if (!wantsSum) return;
    let current = true;
    import('../../../core/quantity/sum.ts').then(
      ({ readSum }) => setSum(() => readSum),
      () => current && setFailedFor(entries),
    );
    return () => {
      current = false;
    };
  }, [wantsSum, entries]);

  if (now === 'needs-sum') return { worked: last.current, stale: true, problems: [], said: {}, chosen: [] };
  const { part } = now;
  const whole = last.current?.missing.length === 0;
  const retyped = whole && part?.missing.length === 1 && part.missing[0] === active?.split('.')[0];
  if (part && !retyped) {
    if (!whole) last.current = part;
    return { worked: part, stale: false, problems: now.problems, said: now.said, chosen: now.chosen };
  }
  if (now.worked) last.current = now.worked;
  return { worked: last.current, stale: !now.worked, problems: now.problems, said: now.said, chosen: now.chosen };
}

interface Outcome {
  readonly worked?: Worked;
  /** What can be given while boxes are empty. */
  readonly part?: Worked;
  readonly problems: readonly Problem[];
  readonly said: Readonly<Record<string, string>>;
  readonly chosen: readonly string[];
}

function calculate(
  topic: TopicParts,
  figures: Figures,
  sum: ReadSum | undefined,
  { decides, parts, shop }: IslandProps,
): Outcome | 'needs-sum' {
  const read = readInputs(topic.fields, rawOf(figures, topic.fields), {
    system: figures.system,
    currency: shop.currency,
    units: unitsRead(figures, topic.fields),
    ...(sum ? { sum } : {}),
  });
  if ('needsSum' in read) return 'needs-sum';
  const { said, chosen, inputs } = read;
  const asked = askedOf(figures, topic.fields);
  const workedWith = (answer: Answer, missing: readonly string[]): Worked => ({
    answer,
    inputs,
    figures,
    asked,
    judged: judged(answer, asked, figures.entries, decides),
    pencil: asked.filter((f) => filledIn(figures.entries[f.key]).some(isPencil)).length,
    missing,
  });
  if (!read.ok) {
    const missing = hasOwn(figures.entries) ? onlyMissing(read.problems) : undefined;
    const part = missing && partAnswer(topic, inputs, missing, decides, parts);
    return { problems: read.problems, said, chosen, ...(part ? { part: workedWith(part, missing) } : {}) };
  }
  const result = topic.compute(inputs);
  if (!result.ok) return { problems: result.problems, said, chosen };
  return { worked: workedWith(result, []), problems: [], said, chosen };
}
