import type { InputsOf } from '../../contract/field.ts';
import { step, type WorkingStep } from '../../contract/formula.ts';
import { guarded } from '../../contract/guarded.ts';
import type { QuantityValue, Result, Value, VerdictValue } from '../../contract/result.ts';
import { eightHours } from '../../exposure/index.ts';
import { isOver, isUnder } from '../../thresholds/index.ts';
import {
  actionPoints,
  actionValue,
  daily,
  doubled,
  limitPoints,
  limitValue,
  partial,
  points,
  timeLeft,
  withUncertainty,
} from './exposure.ts';
import { fields } from './fields.ts';
import * as f from './formulas.ts';

type VibrationInputs = InputsOf<typeof fields>;
type Row = VibrationInputs['tools'][number];

interface Tool {
  readonly what: string;
  /** As given, and as it counts [m/s2]. */
  readonly given: number;
  readonly value: number;
  readonly time: number;
  readonly steps: readonly WorkingStep[];
}

const vibration = ['m/s2', 'm/s2'] as const;
const minutes = ['min', 'min'] as const;

export const compute = guarded(fields, (i): Result => {
  const total = i.tools.reduce((sum, t) => sum + t.time, 0);
  if (total > 86400)
    return { ok: false, problems: [{ field: 'tools', code: 'over-a-day', data: { hours: Math.round(total / 3600) } }] };
  const tools = i.tools.map((row) => toolOf(row, i.allow));
  const sum = tools.reduce((p, t) => p + points(t), 0);
  const day = daily(tools);
  const lowest = daily(tools.map((t) => ({ value: t.given, time: t.time })));
  return {
    ok: true,
    values: [verdict(i, day, sum), ...dayValues(day, lowest, sum), ...leftValues(i, sum), table(tools), checkLocal],
    working: [...pointSteps(tools), step(f.day, { a_l: actionValue, P: sum }, day), ...leftSteps(i, sum)],
    cautions: [{ hazard: 'hand-arm-vibration', level: 'warning' }],
  };
});

function toolOf(row: Row, allow: VibrationInputs['allow']): Tool {
  const tool = { what: row.what, given: row.value, time: row.time };
  if (row.from === 'measured') return { ...tool, value: row.value, steps: [] };
  if (allow === 'double') {
    const value = doubled(row.value);
    return { ...tool, value, steps: [step(f.twice, { a_d: row.value }, value)] };
  }
  const value = withUncertainty(row.value, row.uncertainty);
  const how =
    row.uncertainty === undefined
      ? step(f.assumedK, { a_d: row.value }, value)
      : step(f.plusK, { a_d: row.value, K: row.uncertainty }, value);
  return { ...tool, value, steps: [how] };
}

/** The limit is passed above it; the action value counts from it on. */
function verdict(i: VibrationInputs, day: number, sum: number): VerdictValue {
  const code = isOver(day, limitValue) ? 'over-limit' : isUnder(day, actionValue) ? 'below-action' : 'at-action';
  const left = code === 'below-action' ? actionPoints : limitPoints;
  return {
    kind: 'verdict',
    key: 'verdict',
    label: 'Today',
    code,
    level: code === 'over-limit' ? 'stop' : code === 'at-action' ? 'caution' : 'note',
    data: {
      day: Math.round(day * 10) / 10,
      points: Math.round(sum),
      left: Math.floor(timeLeft(sum, i.next, left) / 60),
      next: Math.round(i.next * 10) / 10,
    },
    main: true,
  };
}

const checkLocal: VerdictValue = {
  kind: 'verdict',
  key: 'check',
  label: 'Rules of your place',
  code: 'check-local',
  level: 'note',
};

function dayValues(day: number, lowest: number, sum: number): Value[] {
  return [
    {
      kind: 'quantity',
      key: 'day',
      label: 'A(8), uncertainty added',
      value: day,
      low: Math.min(lowest, day),
      high: day,
      units: vibration,
      decimals: [1, 1],
      main: true,
      note: 'The lower end takes the figures as they stand.',
    },
    { kind: 'number', key: 'points', label: 'Points (100: act; 400: limit)', value: sum, decimals: 0, main: true },
  ];
}

function leftValues(i: VibrationInputs, sum: number): Value[] {
  const one = (key: string, label: string, limit: number): QuantityValue => ({
    kind: 'quantity',
    key,
    label,
    value: timeLeft(sum, i.next, limit),
    units: minutes,
    decimals: [0, 0],
  });
  return [
    one('actionLeft', 'Left today to the action value', actionPoints),
    one('limitLeft', 'Left today to the limit', limitPoints),
  ];
}

function table(tools: readonly Tool[]): Value {
  return {
    kind: 'table',
    key: 'each',
    label: 'Each tool',
    columns: [
      { key: 'what', label: 'Tool' },
      { key: 'value', label: 'Counts as', units: vibration, decimals: 1 },
      { key: 'time', label: 'Time', units: minutes, decimals: 0 },
      { key: 'points', label: 'Points', decimals: 0 },
      { key: 'partial', label: 'Its A(8)', units: vibration, decimals: 1 },
      { key: 'action', label: 'Alone, to the action value', units: minutes, decimals: 0 },
      { key: 'limit', label: 'Alone, to the limit', units: minutes, decimals: 0 },
    ],
    rows: tools.map((t) => [
      t.what,
      t.value,
      t.time,
      points(t),
      partial(t),
      timeLeft(0, t.value, actionPoints),
      timeLeft(0, t.value, limitPoints),
    ]),
  };
}

function pointSteps(tools: readonly Tool[]): WorkingStep[] {
  let before = 0;
  return tools.flatMap((t) => {
    const after = before + points(t);
    const put = { P_0: before, a: t.value, a_l: actionValue, T: t.time, T_8: eightHours };
    before = after;
    return [...t.steps, step(f.pointsSoFar, put, after)];
  });
}

function leftSteps(i: VibrationInputs, sum: number): WorkingStep[] {
  return [actionPoints, limitPoints].flatMap((limit) => {
    const t = timeLeft(sum, i.next, limit);
    if (t <= 0 || t >= 86400) return [];
    return [step(f.left, { P_l: limit, P: sum, a_l: actionValue, a: i.next, T_8: eightHours }, t)];
  });
}
