/** Replacing a part by the clock: the best age, how little it matters, and when not to. */
import { fitLife, gamma, shapeRange, type Life, type LifeRecord, type ShapeRange } from '../../chance/index.ts';
import { step, type WorkingStep } from '../../contract/formula.ts';
import type { Problem, Value, VerdictValue } from '../../contract/result.ts';
import { isOver, isUnder } from '../../thresholds/index.ts';
import { condition, lasts, rate, runOut, runOutRange, wanted } from './formulas.ts';
import { dustFactor, type ServiceInputs } from './read-list.ts';
import {
  balance,
  bandOf,
  bestAge,
  bestAgeOfRange,
  costRate,
  rangeLaw,
  rateUnder,
  weibullLaw,
  type Costs,
  type LifeLaw,
} from './replacement-age.ts';

/** The minimum is flat: ages that cost at most this much more than the best are as good. */
const flat = 0.05;
/** A clock that saves less than this against running to failure is not worth keeping. Our choice. */
const worthIt = 0.05;
/** With fewer failed parts than this a fitted law says next to nothing: three that fail by chance look like wear in six of ten lists. */
export const leastFailures = 10;

const hour = 3600;

/** A part's life and costs, in the terms the advice and its drawing need. */
export interface Part {
  readonly law: LifeLaw;
  readonly costs: Costs;
  /** Cost rate at an age of replacement [currency per s]. */
  readonly rate: (age: number) => number;
  /** Age of least cost [s]; undefined when no age pays. */
  readonly best: number | undefined;
  /** The fitted or typed Weibull law; undefined for a life known only as a range. */
  readonly weibull: Life | undefined;
}

/** The part asked about; undefined when its records fit no law, or its range is empty. */
export function partOf(inputs: ServiceInputs): Part | undefined {
  const costs: Costs = { planned: inputs.planned ?? 0, failure: inputs.failure ?? 0 };
  const dust = dustFactor(inputs.partDust ?? 'clean', inputs);
  if (inputs.lifeFrom === 'range') {
    const [from, to] = [(inputs.lifeMin ?? 0) * dust, (inputs.lifeMax ?? 0) * dust];
    if (!isOver(to, from)) return undefined;
    const law = rangeLaw(from, to);
    const best = bestAgeOfRange(from, to, costs);
    return { law, costs, rate: (age) => rateUnder(law, costs, age), best, weibull: undefined };
  }
  const life =
    inputs.lifeFrom === 'records'
      ? fitLife(recordsOf(inputs))
      : { shape: inputs.shape ?? 1, scale: (inputs.scale ?? 1) * dust };
  if (!life) return undefined;
  const law = weibullLaw(life);
  return { law, costs, rate: (age) => costRate(life, costs, age), best: bestAge(life, costs), weibull: life };
}

function recordsOf(inputs: ServiceInputs): LifeRecord[] {
  return (inputs.records ?? []).map((r) => ({ time: r.hours, failed: r.failed }));
}

/** Why no age of replacement can be worked out from these inputs; none where it can. */
export function clockProblems(inputs: ServiceInputs): Problem[] {
  if (!inputs.replace || partOf(inputs) !== undefined) return [];
  return inputs.lifeFrom === 'range'
    ? [{ field: 'lifeMax', code: 'range-empty' }]
    : [{ field: 'records', code: 'no-fit' }];
}

export interface ClockAdvice {
  readonly values: readonly Value[];
  readonly steps: readonly WorkingStep[];
}

/** Whether replacing by the clock pays: verdict, best age [s], saving [1] and cost curve, with the working. */
export function clockAdvice(inputs: ServiceInputs): ClockAdvice {
  const part = inputs.replace ? partOf(inputs) : undefined;
  if (!part) return { values: [], steps: [] };
  const range = inputs.lifeFrom === 'records' ? shapeRange(recordsOf(inputs)) : undefined;
  const known = [...lifeValues(part, range), ...askedValues(part, inputs.askedAge)];
  const steps = [runOutStep(part, inputs)];
  const doubt = range ? doubtOf(range) : undefined;
  if (doubt) return { values: [doubt, ...known], steps };
  if (part.best === undefined) {
    return { values: [noAge(part), ...known], steps };
  }
  return {
    values: [...bestValues(part, part.best), ...known, costCurve(part, part.best)],
    steps: [...steps, ...bestSteps(part, part.best)],
  };
}

/** Why no age of replacement is better than running to failure. */
function noAge({ costs, weibull }: Part): VerdictValue {
  if (!isOver(costs.failure, costs.planned)) return advice('clock-failure-is-cheap', 'note');
  if (weibull && !isOver(weibull.shape, 1)) return advice('clock-does-not-wear', 'note');
  // It wears, but so little that the best age lies beyond the last part.
  return advice('clock-hardly-pays', 'note', { saves: 0 });
}

function advice(code: string, level: VerdictValue['level'], data: VerdictValue['data'] = {}): VerdictValue {
  return { kind: 'verdict', key: 'clock', label: 'Replace by the clock?', code, level, data, main: true };
}

/** Records that can't tell wear from chance: too few failures, or a range of shapes with 1 in it. */
function doubtOf(range: ShapeRange): VerdictValue | undefined {
  if (range.failures < leastFailures)
    return advice('clock-too-few', 'note', { failures: range.failures, least: leastFailures });
  if (isUnder(range.high, 1) || isOver(range.low, 1)) return undefined;
  const two = (x: number) => Math.round(x * 100) / 100;
  return advice('clock-not-shown', 'note', { low: two(range.low), high: two(range.high) });
}

function lifeValues(part: Part, range: ShapeRange | undefined): Value[] {
  const runToFailure: Value = {
    kind: 'number',
    key: 'runToFailure',
    label: 'Cost of an hour, run until it fails',
    value: part.rate(Infinity) * hour,
    decimals: 3,
  };
  const life = part.weibull;
  if (!life) return [runToFailure];
  return [
    {
      kind: 'number',
      key: 'shape',
      label: 'Weibull shape',
      value: life.shape,
      decimals: 2,
      ...(range
        ? {
            low: range.low,
            high: range.high,
            note: `From ${range.failures} failures; the records leave this range open.`,
          }
        : {}),
    },
    {
      kind: 'quantity',
      key: 'scale',
      label: 'Hours by which 63 % have failed, under this duty',
      value: life.scale,
      units: ['h', 'h'],
      decimals: [0, 0],
    },
    runToFailure,
  ];
}

/** Cost at an age the reader asks about. */
function askedValues(part: Part, age: number | undefined): Value[] {
  if (age === undefined) return [];
  return [
    {
      kind: 'number',
      key: 'askedRate',
      label: 'Cost of an hour, replaced at the age asked for',
      value: part.rate(age) * hour,
      decimals: 3,
    },
    {
      kind: 'quantity',
      key: 'askedFails',
      label: 'Share that fails before the age asked for',
      value: 1 - part.law.lasts(age),
      units: ['%', '%'],
      decimals: [0, 0],
    },
  ];
}

function bestValues(part: Part, best: number): Value[] {
  const [least, runToFailure] = [part.rate(best), part.rate(Infinity)];
  const saves = 1 - least / runToFailure;
  const band = bandOf(part.rate, best, part.law.far, flat);
  const pays = !isUnder(saves, worthIt);
  return [
    advice(pays ? 'clock-pays' : 'clock-hardly-pays', pays ? 'good' : 'note', { saves: Math.round(saves * 1000) / 10 }),
    {
      kind: 'quantity',
      key: 'bestAge',
      label: 'Age of least cost',
      value: best,
      low: band.low,
      ...(band.high === Infinity ? {} : { high: band.high }),
      units: ['h', 'h'],
      decimals: [0, 0],
      main: pays,
      note: `Any age in the range costs at most ${flat * 100} % more${band.high === Infinity ? '; there is no upper end to it' : ''}.`,
    },
    {
      kind: 'number',
      key: 'bestRate',
      label: 'Cost of an hour, replaced at that age',
      value: least * hour,
      decimals: 3,
    },
    {
      kind: 'quantity',
      key: 'saves',
      label: 'Saved against running to failure',
      value: saves,
      units: ['%', '%'],
      decimals: [1, 1],
    },
    {
      kind: 'quantity',
      key: 'failsFirst',
      label: 'Share that fails before that age',
      value: 1 - part.law.lasts(best),
      units: ['%', '%'],
      decimals: [0, 0],
    },
  ];
}

function runOutStep({ weibull, law, costs, rate: at }: Part, inputs: ServiceInputs): WorkingStep {
  const C_f = costs.failure;
  if (weibull) {
    const gave = (C_f / (weibull.scale * gamma(1 + 1 / weibull.shape))) * hour;
    return step(runOut, { C_f, m: weibull.scale / hour, b: weibull.shape }, gave);
  }
  const m_2 = law.far / hour;
  const m_1 = (m_2 * (inputs.lifeMin ?? 0)) / (inputs.lifeMax ?? 1);
  return step(runOutRange, { C_f, m_1, m_2 }, at(Infinity) * hour);
}

function bestSteps({ weibull, law, costs, rate: at }: Part, best: number): WorkingStep[] {
  const [C_p, C_f] = [costs.planned, costs.failure];
  const [R, M] = [law.lasts(best), law.service(best)];
  const shared = step(rate, { C_p, C_f, R, M: M / hour }, at(best) * hour);
  if (!weibull) return [shared];
  return [
    step(lasts, { T: best, eta: weibull.scale, b: weibull.shape }, R),
    step(condition, { b: weibull.shape, eta: weibull.scale, T: best, M, R }, balance(weibull, best)),
    step(wanted, { C_p, C_f }, C_p / (C_f - C_p)),
    shared,
  ];
}

/** Cost of an hour against the age at replacement: what a drawing needs. */
function costCurve(part: Part, best: number): Value {
  const ages = [0.25, 0.5, 0.75, 1, 1.25, 1.5, 2, 2.5, 3].map((k) => k * best);
  return {
    kind: 'table',
    key: 'costCurve',
    label: 'Cost of an hour against the age at replacement',
    columns: [
      { key: 'age', label: 'Replaced at', units: ['h', 'h'], decimals: 0 },
      { key: 'cost', label: 'Cost of an hour', decimals: 3 },
    ],
    rows: ages.map((age) => [age, part.rate(age) * hour]),
  };
}
