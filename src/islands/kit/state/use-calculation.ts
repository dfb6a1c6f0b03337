/** From boxes to answer: reads what was typed, loads the sum evaluator when it is needed, keeps the last good answer. */
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Inputs } from '../../../core/contract/field.ts';
import type { Read, Wanted } from '../../../core/quantity/index.ts';
import { readInputs } from '../../../core/contract/read-inputs.ts';
import type { Answer, Problem } from '../../../core/contract/result.ts';
import type { TopicParts } from './topic-parts.ts';
import { rawOf, unitsRead, type Figures } from './figures.ts';

export interface Worked {
  readonly answer: Answer;
  /** The SI inputs that gave this answer; drawings use them. */
  readonly inputs: Inputs;
  /** Boxes as they stood then, for the list of figures used. */
  readonly figures: Figures;
}

export interface Calculation {
  /** The newest answer there is; older than the boxes while `stale`. */
  readonly worked: Worked | undefined;
  readonly stale: boolean;
  readonly problems: readonly Problem[];
  /** "1.1875 in = 30.1625 mm", by field. */
  readonly said: Readonly<Record<string, string>>;
}

type ReadSum = (text: string, wanted: Wanted) => Read;

export function useCalculation(topic: TopicParts, figures: Figures): Calculation {
  const [sum, setSum] = useState<ReadSum>();
  const last = useRef<Worked>();
  const from = useRef(figures.base);
  if (from.current !== figures.base) {
    from.current = figures.base;
    last.current = undefined;
  }

  const { base, typed, typedIn, system } = figures;
  const now = useMemo(() => calculate(topic, figures, sum), [topic, base, typed, typedIn, system, sum]);
  const wantsSum = now === 'needs-sum' && !sum;
  useEffect(() => {
    if (!wantsSum) return;
    void import('../../../core/quantity/sum.ts').then(({ readSum }) => setSum(() => readSum));
  }, [wantsSum]);

  if (now === 'needs-sum') return { worked: last.current, stale: true, problems: [], said: {} };
  if (now.worked) last.current = now.worked;
  return { worked: last.current, stale: !now.worked, problems: now.problems, said: now.said };
}

interface Outcome {
  readonly worked?: Worked;
  readonly problems: readonly Problem[];
  readonly said: Readonly<Record<string, string>>;
}

function calculate(topic: TopicParts, figures: Figures, sum: ReadSum | undefined): Outcome | 'needs-sum' {
  const read = readInputs(topic.fields, rawOf(figures), {
    system: figures.system,
    units: unitsRead(figures, topic.fields),
    ...(sum ? { sum } : {}),
  });
  if (!read.ok) return 'needsSum' in read ? 'needs-sum' : { problems: read.problems, said: {} };
  const result = topic.compute(read.inputs);
  if (!result.ok) return { problems: result.problems, said: read.said };
  return { worked: { answer: result, inputs: read.inputs, figures }, problems: [], said: read.said };
}
