/** What measured air means: the average of the day against the limit, and the mask that brings it under. */
import { step, type WorkingStep } from '../../contract/formula.ts';
import type { Result, Value, VerdictValue } from '../../contract/result.ts';
import {
  dayAverage,
  eightHours,
  leastRespirator,
  longShiftFactor,
  mostConcentration,
  silicaLimit,
  timeToLimit,
  worstEightHours,
  type ProtectionScale,
  type Respirator,
  type Spell,
} from '../../exposure/index.ts';
import { isOver, isUnder } from '../../thresholds/index.ts';
import * as f from './formulas.ts';
import { cautions, filterValues, halfMaskFactor, isUsa, limitValues, verdict, type DustInputs } from './shared.ts';

interface Air {
  readonly spells: readonly Spell[];
  readonly shift: number;
  readonly measuredTime: number;
  /** Whole shift over 8 h, worst 8 h, and the one the law of the place goes by [kg/m3]. */
  readonly whole: number;
  readonly worst: number;
  readonly counts: number;
  readonly limit: number;
  readonly action: number | undefined;
}

/** No British mask below the best half mask for silica. Source: hse-kerbs. */
const britishFactor = halfMaskFactor;
const mg = ['mg/m3', 'mg/m3'] as const;

/** Protection by a measured concentration [kg/m3]: values, verdicts and cautions. */
export function byMeasurement(i: DustInputs): Result {
  const spells = i.spells ?? [];
  const shift = i.shift ?? eightHours;
  const measuredTime = spells.reduce((sum, s) => sum + s.time, 0);
  if (measuredTime <= 0) return { ok: false, problems: [{ field: 'spells', code: 'no-time' }] };
  if (isOver(measuredTime, shift))
    return {
      ok: false,
      problems: [
        { field: 'spells', code: 'over-the-shift', data: { hours: hoursOf(measuredTime), shift: hoursOf(shift) } },
      ],
    };
  const air = airOf(i, spells, shift, measuredTime);
  const ratio = air.counts / air.limit;
  const mask = maskFor(i, ratio);
  return {
    ok: true,
    values: [
      ruling(air, ratio),
      ...longShift(air),
      ...maskValues(i, air, ratio, mask),
      ...airValues(air, spells),
      ...limitValues(i),
      // Where no mask is enough, there is no filter to name.
      ...(scaleOf(i) !== undefined && mask === undefined ? [] : filterValues(i, mask?.factor)),
    ],
    working: working(i, air, spells, ratio),
    cautions,
  };
}

const hoursOf = (seconds: number) => Math.round((seconds / 3600) * 100) / 100;

/** Unmeasured hours join as one more spell. The US goes by the worst 8 h, other places by the whole day over 8 h. */
function airOf(i: DustInputs, spells: readonly Spell[], shift: number, measuredTime: number): Air {
  const mean = (dayAverage(spells) * eightHours) / measuredTime;
  const rest: Spell = { concentration: i.unsampled === 'zero' ? 0 : mean, time: Math.max(0, shift - measuredTime) };
  const all = [...spells, rest];
  const [whole, worst] = [dayAverage(all), worstEightHours(all)];
  const row = silicaLimit(i.rule);
  return {
    spells: all,
    shift,
    measuredTime,
    whole,
    worst,
    counts: isUsa(i) ? worst : whole,
    limit: (row.limit ?? 0) * 1e-6,
    action: row.action === undefined ? undefined : row.action * 1e-6,
  };
}

function ruling(air: Air, ratio: number): VerdictValue {
  const say = (code: string, level: VerdictValue['level']) =>
    verdict('verdict', 'Against the limit', code, level, {
      average: air.counts,
      limit: air.limit,
      times: Math.round(ratio * 10) / 10,
    });
  if (isOver(air.counts, air.limit)) return say('over-limit', 'stop');
  if (air.action !== undefined && !isUnder(air.counts, air.action)) return say('at-action', 'caution');
  return say('under-limit', 'note');
}

function longShift(air: Air): VerdictValue[] {
  if (!isOver(air.shift, eightHours)) return [];
  const scaled = air.limit * longShiftFactor(air.shift);
  const code = isOver(air.whole * (eightHours / air.shift), scaled) ? 'long-over' : 'long-within';
  return [
    verdict('longShift', 'Long shift', code, code === 'long-over' ? 'caution' : 'note', {
      limit: scaled,
      hours: hoursOf(air.shift),
    }),
  ];
}

function scaleOf(i: DustInputs): ProtectionScale | undefined {
  return isUsa(i) ? 'us' : i.rule === 'gb' ? 'gb' : undefined;
}

function maskFor(i: DustInputs, ratio: number): Respirator | undefined {
  const scale = scaleOf(i);
  if (scale === undefined) return undefined;
  return leastRespirator(scale, scale === 'gb' ? Math.max(britishFactor, ratio) : ratio);
}

function maskValues(i: DustInputs, air: Air, ratio: number, mask: Respirator | undefined): Value[] {
  const over = isOver(ratio, 1);
  const times: Value = { kind: 'number', key: 'ratio', label: 'Times the limit', value: ratio, decimals: 2 };
  const scale = scaleOf(i);
  if (scale === undefined)
    return [times, ...(over ? [verdict('mask', 'Respirator', 'mask-elsewhere', 'caution')] : [])];
  if (!over && scale === 'us') return [times];
  if (!mask) return [times, verdict('mask', 'Respirator', 'mask-none', 'stop')];
  return [
    times,
    verdict('mask', 'Respirator', 'mask-factor', 'caution', { factor: mask.factor, what: mask.what }),
    {
      kind: 'count',
      key: 'factor',
      label: 'Protection factor, at least',
      value: mask.factor,
      main: true,
      source: mask.source,
    },
    {
      kind: 'quantity',
      key: 'most',
      label: 'Such a mask is good up to',
      value: mostConcentration(mask.factor, air.limit),
      units: mg,
      decimals: [2, 2],
    },
  ];
}

function airValues(air: Air, spells: readonly Spell[]): Value[] {
  const dustiest = Math.max(...spells.map((s) => s.concentration));
  const alone = timeToLimit(dustiest, air.limit);
  return [
    {
      kind: 'quantity',
      key: 'average',
      label: 'Average that counts',
      value: air.counts,
      units: mg,
      decimals: [3, 3],
      main: true,
    },
    { kind: 'quantity', key: 'whole', label: 'Whole shift over 8 h', value: air.whole, units: mg, decimals: [3, 3] },
    { kind: 'quantity', key: 'worst', label: 'Worst 8 h of it', value: air.worst, units: mg, decimals: [3, 3] },
    ...(alone === Infinity
      ? []
      : [
          {
            kind: 'quantity',
            key: 'alone',
            label: 'The dustiest task alone reaches the limit in',
            value: alone,
            units: ['min', 'min'],
            decimals: [1, 1],
          } as const,
        ]),
  ];
}

function working(i: DustInputs, air: Air, spells: readonly Spell[], ratio: number): WorkingStep[] {
  let before = 0;
  const steps: WorkingStep[] = spells.map((s) => {
    const after = before + (s.concentration * s.time) / eightHours;
    const one = step(f.average, { E_0: before, C: s.concentration, T: s.time, T_8: eightHours }, after);
    before = after;
    return one;
  });
  if (i.unsampled !== 'zero' && isOver(air.shift, air.measuredTime))
    steps.push(step(f.unsampled, { E_m: before, S: air.shift, T_m: air.measuredTime }, air.whole));
  steps.push(step(f.ratio, { E: air.counts, L: air.limit }, ratio));
  if (isOver(air.shift, eightHours))
    steps.push(
      step(
        f.longShift,
        { L: air.limit, T_8: eightHours, S: air.shift, T_d: 86400, T_r: 57600 },
        air.limit * longShiftFactor(air.shift),
      ),
    );
  const dustiest = Math.max(...spells.map((s) => s.concentration));
  const alone = timeToLimit(dustiest, air.limit);
  if (alone !== Infinity) steps.push(step(f.alone, { T_8: eightHours, L: air.limit, C: dustiest }, alone));
  return steps;
}
