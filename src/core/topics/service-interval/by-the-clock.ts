/** Replacing a part by the clock: the best age, how little it matters, and when not to. */
import { fitLife, gamma, meanServiceUpTo, survival, type Life } from '../../chance/index.ts';
import { step, type WorkingStep } from '../../contract/formula.ts';
import type { Problem, Value } from '../../contract/result.ts';
import { condition, lasts, rate, runOut, wanted } from './formulas.ts';
import { dustFactor, type ServiceInputs } from './read-list.ts';
import { balance, bestAge, costRate, flatBand, type Costs } from './replacement-age.ts';

/** The minimum is flat: ages that cost at most this much more than the best are as good. */
const flat = 0.05;
/** A clock that saves less than this against running to failure is not worth keeping. Our choice. */
const worthIt = 0.05;

/** Life of the part under its duty [s]; undefined when the records fit no law. */
export function partLife(inputs: ServiceInputs): Life | undefined {
  if (inputs.lifeFrom === 'records')
    return fitLife((inputs.records ?? []).map((r) => ({ time: r.hours, failed: r.failed })));
  return { shape: inputs.shape ?? 1, scale: (inputs.scale ?? 1) * dustFactor(inputs.partDust ?? 'clean', inputs) };
}

export function clockProblems(inputs: ServiceInputs): Problem[] {
  return inputs.replace && partLife(inputs) === undefined ? [{ field: 'records', code: 'no-fit' }] : [];
}

export function clockValues(inputs: ServiceInputs, working: WorkingStep[]): Value[] {
  const life = partLife(inputs);
  if (!inputs.replace || !life) return [];
  const costs: Costs = { planned: inputs.planned ?? 0, failure: inputs.failure ?? 0 };
  const hour = 3600;
  const perHour = (age: number) => costRate(life, costs, age) * hour;
  const runToFailure = perHour(Infinity);
  working.push(
    step(
      runOut,
      { C_f: costs.failure, m: life.scale / hour, b: life.shape },
      (costs.failure / (life.scale * gamma(1 + 1 / life.shape))) * hour,
    ),
  );
  const known: Value[] = [
    { kind: 'number', key: 'shape', label: 'Weibull shape', value: life.shape, decimals: 2 },
    {
      kind: 'quantity',
      key: 'scale',
      label: 'Hours by which 63 % have failed, under this duty',
      value: life.scale,
      units: ['h', 'h'],
      decimals: [0, 0],
    },
    {
      kind: 'number',
      key: 'runToFailure',
      label: 'Cost of an hour, run until it fails',
      value: runToFailure,
      decimals: 3,
    },
  ];
  const best = bestAge(life, costs);
  if (best === undefined)
    return [
      {
        kind: 'verdict',
        key: 'clock',
        label: 'Replace by the clock?',
        code: life.shape <= 1 ? 'clock-does-not-wear' : 'clock-failure-is-cheap',
        level: 'note',
        main: true,
      },
      ...known,
    ];
  const [R, M] = [survival(life, best), meanServiceUpTo(life, best)];
  working.push(
    step(lasts, { T: best, eta: life.scale, b: life.shape }, R),
    step(condition, { b: life.shape, eta: life.scale, T: best, M, R }, balance(life, best)),
    step(wanted, { C_p: costs.planned, C_f: costs.failure }, costs.planned / (costs.failure - costs.planned)),
    step(rate, { C_p: costs.planned, C_f: costs.failure, R, M: M / hour }, perHour(best)),
  );
  const saves = 1 - perHour(best) / runToFailure;
  const band = flatBand(life, costs, best, flat);
  const pays = saves >= worthIt;
  return [
    {
      kind: 'verdict',
      key: 'clock',
      label: 'Replace by the clock?',
      code: pays ? 'clock-pays' : 'clock-hardly-pays',
      level: pays ? 'good' : 'note',
      data: { saves: Math.round(saves * 1000) / 10 },
      main: true,
    },
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
      value: perHour(best),
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
      value: 1 - R,
      units: ['%', '%'],
      decimals: [0, 0],
    },
    ...known,
    costCurve(life, costs, best),
  ];
}

/** Cost of an hour against the age at replacement: what a drawing needs. */
function costCurve(life: Life, costs: Costs, best: number): Value {
  const ages = [0.25, 0.5, 0.75, 1, 1.25, 1.5, 2, 2.5, 3].map((k) => k * best);
  return {
    kind: 'table',
    key: 'costCurve',
    label: 'Cost of an hour against the age at replacement',
    columns: [
      { key: 'age', label: 'Replaced at', units: ['h', 'h'], decimals: 0 },
      { key: 'cost', label: 'Cost of an hour', decimals: 3 },
    ],
    rows: ages.map((age) => [age, costRate(life, costs, age) * 3600]),
  };
}
