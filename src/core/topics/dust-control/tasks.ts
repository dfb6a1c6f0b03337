/** What the rules ask of a shift's dusty tasks. Dry work is never let through, and no engine indoors. */
import { step, type WorkingStep } from '../../contract/formula.ts';
import type { Result, Value, VerdictValue } from '../../contract/result.ts';
import { isOver } from '../../thresholds/index.ts';
import { controlTable, factorAsked, isDryCut } from './control-table.ts';
import * as f from './formulas.ts';
import { cautions, filterValues, halfMaskFactor, limitValues, verdict, type DustInputs } from './shared.ts';

type Work = NonNullable<DustInputs['work']>[number];

/** Britain asks for this with water on, outdoors too. Source: hse-kerbs. */
const britishFactor = halfMaskFactor;

/** Protection by the task, as the control table has it: values, verdicts and cautions. */
export function byTask(i: DustInputs): Result {
  const work = i.work ?? [];
  const hours = work.reduce((sum, w) => sum + w.time, 0);
  if (isOver(hours, 86400))
    return { ok: false, problems: [{ field: 'work', code: 'over-a-day', data: { hours: Math.round(hours / 3600) } }] };
  const engineInside = work.some(isEngineInside);
  const asked = work.map((w) => askedFor(i, w, hours));
  const factor = engineInside || asked.includes(undefined) ? undefined : Math.max(...asked.map((a) => a ?? 0));
  const values: Value[] = [
    ruling(i, work, asked, factor),
    ...(factor === undefined
      ? []
      : [
          {
            kind: 'count',
            key: 'factor',
            label: 'Protection factor asked for, at least',
            value: factor,
            main: true,
          } as const,
        ]),
    {
      kind: 'quantity',
      key: 'hours',
      label: 'Dusty work in the shift',
      value: hours,
      units: ['h', 'h'],
      decimals: [2, 2],
    },
    table(i, work, asked),
    ...(work.some((w) => w.place === 'enclosed')
      ? [verdict('place', 'Indoors or enclosed', 'enclosed-means', 'note', {}, false)]
      : []),
    ...limitValues(i),
    // Before work that must not be done no filter is named.
    ...(engineInside || work.some((w) => w.control === 'none') ? [] : filterValues(i)),
  ];
  return {
    ok: true,
    values,
    working: hourSteps(work),
    cautions: engineInside ? [...cautions, { hazard: 'carbon-monoxide', level: 'danger' }] : cautions,
  };
}

/** True where the US control table holds: construction, and a shop's work that is not its regular one. */
const goesByTable = (i: DustInputs) => i.rule === 'us-construction' || (i.rule === 'us-general' && i.regular === false);

const isEngineInside = (w: Work) => w.power === 'engine' && w.place === 'enclosed';

/**
 * Dry work nobody is let do: with nothing to hold the dust, or a saw without water. Outdoors Britain's authority
 * names extraction made for the saw beside water, with the same mask. Source: hse-kerbs.
 */
function isRefused(i: DustInputs, w: Work): boolean {
  return w.control === 'none' || (isDryCut(w) && (w.place === 'enclosed' || i.rule !== 'gb'));
}

/** Protection factor of one task; undefined where no rule seen here lets it be done without measuring. */
function askedFor(i: DustInputs, w: Work, hours: number): number | undefined {
  if (isRefused(i, w)) return undefined;
  if (goesByTable(i)) return factorAsked(w.task, w.control, w.place, hours);
  return i.rule === 'gb' ? britishFactor : undefined;
}

function ruling(
  i: DustInputs,
  work: readonly Work[],
  asked: readonly (number | undefined)[],
  factor: number | undefined,
): VerdictValue {
  const say = (code: string, level: VerdictValue['level'], data: VerdictValue['data'] = {}) =>
    verdict('verdict', 'What the rules ask', code, level, data);
  const listed = goesByTable(i);
  const refused = work.filter((w) => isRefused(i, w));
  if (refused.some((w) => w.place === 'enclosed')) return say('dry-inside', 'stop');
  if (work.some(isEngineInside)) return say('engine-inside', 'stop');
  // A saw outdoors with a vacuum and no water: the table says what it asks instead; elsewhere it is dry like any other.
  if (refused.some((w) => w.control === 'none' || !listed)) return say('dry', 'stop');
  if (i.rule === 'us-general' && !listed) return say('assess-shop', 'caution');
  if (factor === undefined) {
    const missing = work.find((_, k) => asked[k] === undefined);
    if (!listed || !missing) return say('no-table', 'caution', { place: i.rule });
    const row = controlTable[missing.task];
    if (missing.control === row.control) return say('not-there', 'stop', { task: row.what });
    return say('wrong-control', 'stop', { task: row.what, asks: row.asks });
  }
  if (i.rule === 'gb') return say(work.some(isDryCut) ? 'britain-extraction' : 'britain', 'caution', { factor });
  return factor > 0 ? say('table-mask', 'caution', { factor }) : say('table-none', 'note');
}

function table(i: DustInputs, work: readonly Work[], asked: readonly (number | undefined)[]): Value {
  const usa = i.rule === 'us-construction' || i.rule === 'us-general';
  return {
    kind: 'table',
    key: 'each',
    label: 'Each task',
    columns: [
      { key: 'task', label: 'Task' },
      { key: 'place', label: 'Where' },
      { key: 'time', label: 'Hours', units: ['h', 'h'], decimals: 1 },
      { key: 'asks', label: 'It must have' },
      { key: 'factor', label: 'Protection factor' },
    ],
    rows: work.map((w, k) => {
      const row = controlTable[w.task];
      const name = usa ? `${row.what} (row ${row.row})` : row.what;
      const factor = asked[k];
      return [
        name,
        w.place === 'outdoors' ? 'outdoors' : 'indoors or enclosed',
        w.time,
        row.asks,
        isRefused(i, w) || isEngineInside(w)
          ? 'do not'
          : factor === undefined
            ? 'assess first'
            : factor === 0
              ? 'none asked'
              : factor,
      ];
    }),
  };
}

function hourSteps(work: readonly Work[]): WorkingStep[] {
  let before = 0;
  return work.map((w) => {
    const after = before + w.time;
    const one = step(f.hoursSoFar, { h_0: before, T: w.time }, after);
    before = after;
    return one;
  });
}
