/** One calculator's state: what is in the boxes, what comes of it, and the acts a reader can do. */
import { useEffect, useReducer, useState } from 'preact/hooks';
import { describeProblem } from '../../../core/contract/messages.ts';
import type { RawInputs } from '../../../core/contract/field.ts';
import type { UnitSystem } from '../../../core/quantity/index.ts';
import type { Form } from './form.ts';
import type { IslandProps } from './props.ts';
import type { TopicParts } from './topic-parts.ts';
import { changeFigures, rawOf, startFigures, type Figures } from './figures.ts';
import { readLink } from './link.ts';
import { blankFigures } from './shown-text.ts';
import { rememberedUnits, rememberUnits } from './remembered.ts';
import { useCalculation, type Calculation } from './use-calculation.ts';
import { visibleProblems } from './visible-problems.ts';

export interface Bench {
  /** False on the server and in the first render: the page is a printed example until scripts take over. */
  readonly live: boolean;
  readonly figures: Figures;
  readonly calculation: Calculation;
  readonly form: Form;
  /** For the summary, in the order of the boxes. */
  readonly problemLines: readonly { readonly path: string; readonly text: string }[];
  /** How often the button was pressed; the focus moves on each press. */
  readonly presses: number;
  readonly press: () => void;
  readonly switchUnits: (system: UnitSystem) => void;
  readonly empty: () => void;
  readonly showExample: () => void;
}

export function useForm(
  topic: TopicParts,
  page: IslandProps,
  example: RawInputs,
  toToday: (figures: RawInputs) => RawInputs = (figures) => figures,
): Bench {
  const [figures, change] = useReducer(changeFigures, undefined, () => startFigures(example, true, page.shop.units));
  const [live, setLive] = useState(false);
  const [active, setActive] = useState<string>();
  const [presses, setPresses] = useState(0);
  const calculation = useCalculation(topic, figures);

  useEffect(() => {
    const linked = page.compact ? undefined : readLink(location.search, topic.fields, page.id);
    const system = linked?.system ?? rememberedUnits();
    if (linked) change({ do: 'start', base: linked.base, isExample: false });
    else if (toToday(example) !== example) change({ do: 'start', base: toToday(example), isExample: true });
    if (system) change({ do: 'units', system });
    setLive(true);
  }, []);

  const nothingWrong = calculation.problems.length === 0;
  useEffect(() => {
    if (nothingWrong) change({ do: 'settle' });
  }, [nothingWrong]);

  const context = { fields: topic.fields, words: topic.words, system: figures.system, currency: page.shop.currency };
  const lines = visibleProblems(calculation.problems, figures, active).map((p) => ({
    path: p.field,
    text: describeProblem(p, context),
  }));
  const form: Form = {
    id: page.id,
    figures,
    raw: rawOf(figures),
    currency: page.shop.currency,
    problemAt: Object.fromEntries(lines.map((l) => [l.path, l.text])),
    said: calculation.said,
    type: (key, value) => change({ do: 'type', key, value }),
    enter: setActive,
    leave: (path) => {
      setActive(undefined);
      change({ do: 'leave', path });
    },
  };

  return {
    live,
    figures,
    calculation,
    form,
    problemLines: lines,
    presses,
    press: () => {
      change({ do: 'press' });
      setPresses((n) => n + 1);
    },
    switchUnits: (system) => {
      rememberUnits(system);
      change({ do: 'units', system });
    },
    empty: () => change({ do: 'start', base: toToday(blankFigures(topic.fields)), isExample: false }),
    showExample: () => change({ do: 'start', base: toToday(example), isExample: true }),
  };
}
