/** One calculator's state: what is in the boxes, what comes of it, and the acts a reader can do. */
import { useEffect, useMemo, useReducer, useState } from 'preact/hooks';
import { isRows, type Entries } from '../../../core/contract/entry.ts';
import { describeProblem } from '../../../core/contract/messages.ts';
import type { RawInputs } from '../../../core/contract/field.ts';
import type { UnitSystem } from '../../../core/quantity/index.ts';
import type { Form } from './form.ts';
import { takeUpAtRest } from './at-rest.ts';
import { plateOnBench, plateSays } from './plate.ts';
import type { IslandProps, Plate } from './props.ts';
import type { TopicParts } from './topic-parts.ts';
import { changesOf, rawOf, startFigures, type Change, type Figures } from './figures.ts';
import { keptIn, placeOf, type Kept } from './kept.ts';
import { readLink } from './link.ts';
import { watchBench } from '../../../browser/device/index.ts';
import { rememberedUnits, rememberUnits } from './remembered.ts';
import { blankEntries, exampleEntries, laidOver, pageEntries } from './starts.ts';
import { useKept } from './use-kept.ts';
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
  readonly change: (change: Change) => void;
  readonly press: () => void;
  readonly switchUnits: (system: UnitSystem) => void;
  readonly empty: () => void;
  /** What a machine on the bench fills in here, if there is one. */
  readonly plate: Plate | undefined;
  /** Back to the plate of the machine on the bench; without one to the worked example, or the figures of the article. */
  readonly showStart: () => void;
}

export interface Starts {
  /** Figures of the shop's own file. */
  readonly shop?: RawInputs | undefined;
  /** Fits figures that hold a day to the day it is for the reader. */
  readonly toToday?: ((figures: RawInputs) => RawInputs) | undefined;
}

const asIs = (figures: RawInputs) => figures;

export function useForm(topic: TopicParts, page: IslandProps, { shop = {}, toToday = asIs }: Starts): Bench {
  const { fields } = topic;
  /** The shop's own rates stand in the boxes whatever else does. */
  const withShop = (entries: Entries) => laidOver(fields, entries, shop, 'usual');
  const begin = (today: (figures: RawInputs) => RawInputs) =>
    page.preset
      ? laidOver(fields, withShop(pageEntries(fields, {})), today(page.preset), 'page')
      : withShop(exampleEntries(fields, today(topic.example)));
  const blank = () => withShop(blankEntries(fields));

  const reducer = useMemo(() => changesOf(fields), [fields]);
  const [figures, change] = useReducer(reducer, undefined, () => startFigures(begin(asIs), page.shop.units));
  const [live, setLive] = useState(false);
  const [begun, setBegun] = useState(false);
  const [active, setActive] = useState<string>();
  const [presses, setPresses] = useState(0);
  const calculation = useCalculation(topic, figures, page, active);

  const [plate, setPlate] = useState<Plate>();
  const fillPlate = (from: Plate | undefined) =>
    change({ do: 'fill', figures: from?.figures ?? {}, from: 'plate', of: { machine: from?.name ?? '' } });

  const entriesFor = (kept: Kept | undefined): Entries =>
    kept && !kept.untouched ? { ...blank(), ...kept.entries } : begin(toToday);

  useEffect(() => {
    const kept = keptIn(placeOf(page));
    const linked = page.compact ? undefined : readLink(location.search, fields, page.id, blank());
    if (kept ?? toToday !== asIs) change({ do: 'start', entries: entriesFor(kept), fresh: true });
    // A link's figures stand over what was kept, which is one "Undo" away.
    if (linked) change({ do: 'start', entries: linked.entries, fresh: kept === undefined || kept.untouched });
    const atRest = takeUpAtRest(page.id, fields);
    if (atRest.system) rememberUnits(atRest.system);
    const system = atRest.system ?? linked?.system ?? rememberedUnits();
    if (system) change({ do: 'units', system });
    setLive(true);
    const onBench = page.preset ? undefined : plateOnBench(page);
    setPlate(onBench);
    if (onBench && !linked && machineIn(kept?.entries) !== onBench.name) fillPlate(onBench);
    for (const { path, text } of atRest.typed) change({ do: 'type', path, text });
    setBegun(atRest.typed.length > 0);
    setActive(atRest.active);
    // Once, when the page comes alive: nothing that happens later may start the form again.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, []);
  useEffect(
    () =>
      watchBench(() => {
        if (page.preset) return;
        const onBench = plateOnBench(page);
        setPlate(onBench);
        fillPlate(onBench);
      }),
    // The bench is watched for as long as the page is open.
    // eslint-disable-next-line react-hooks/exhaustive-deps
    [],
  );
  useKept({
    page,
    live,
    entries: figures.entries,
    begun,
    isStart: (entries) => JSON.stringify(entries) === JSON.stringify(begin(toToday)),
    onTaken: (kept) => {
      change({ do: 'start', entries: entriesFor(kept) });
      const onBench = page.preset ? undefined : plateOnBench(page);
      if (onBench && machineIn(kept?.entries) !== onBench.name) fillPlate(onBench);
    },
  });

  const nothingWrong = calculation.problems.length === 0;
  useEffect(() => {
    if (nothingWrong) change({ do: 'settle' });
  }, [nothingWrong]);

  const context = { fields, words: topic.words, system: figures.system, currency: page.shop.currency };
  const lines = visibleProblems(calculation.problems, figures, active).map((p) => ({
    path: p.field,
    text: describeProblem(p, context),
  }));
  const form: Form = {
    id: page.id,
    figures,
    raw: rawOf(figures, fields),
    currency: page.shop.currency,
    problemAt: Object.fromEntries(lines.map((l) => [l.path, l.text])),
    readingsAt: Object.fromEntries(
      calculation.problems.flatMap((p) => (p.readings ? [[p.field, p.readings] as const] : [])),
    ),
    plateSaysAt: plate ? plateSays(fields, plate, figures, page.shop.currency) : {},
    said: calculation.said,
    chosen: calculation.chosen,
    type: (path, text, whole = false) => change({ do: 'type', path, text, whole }),
    addRow: (key) => change({ do: 'add-row', key }),
    removeRow: (key, at) => change({ do: 'remove-row', key, at }),
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
    change,
    press: () => {
      change({ do: 'press' });
      setPresses((n) => n + 1);
    },
    switchUnits: (system) => {
      rememberUnits(system);
      change({ do: 'units', system });
    },
    empty: () => change({ do: 'start', entries: blank() }),
    plate,
    showStart: () => {
      change({ do: 'start', entries: plate ? blank() : begin(toToday) });
      if (plate) fillPlate(plate);
    },
  };
}

/** Name of the machine whose figures stand among these. */
function machineIn(entries: Entries | undefined): string | undefined {
  return Object.values(entries ?? {}).flatMap((held) => (isRows(held) ? [] : (held.of?.machine ?? [])))[0];
}
