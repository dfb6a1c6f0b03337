/** "At this reading of the hour meter, what is due?": every service that goes by hours, in its state. */
import type { TableValue, Value, VerdictValue } from '../../contract/result.ts';
import { isOver } from '../../thresholds/index.ts';
import type { DueLine, ServiceInputs } from './read-list.ts';

export type MeterState = 'overdue' | 'due' | 'coming' | 'later';

export interface MeterLine {
  readonly line: DueLine;
  readonly state: MeterState;
  /** What the meter reads now, and the reading at which it is due [s]. */
  readonly meter: number;
  readonly dueAt: number;
  /** Hours still to run [s]; below zero when they have passed. */
  readonly left: number;
}

/**
 * State of a service by its hours: overdue once the meter has passed its reading; due within a share of its interval
 * before it; coming within some hours; else later. A service counted from 0 is due on both sides of its reading: nobody
 * knows whether it was done.
 * @param meter [s] @param dueAt [s] @param interval [s] @param near share of the interval [1] @param ahead [s]
 * Example: every 100 h, due at 1,000 h, a tenth, 50 h ahead: 992 h -> due, 980 h -> coming, 1,001 h -> overdue.
 * Source: arithmetic.
 */
export function stateOf(
  { meter, dueAt, interval }: { readonly meter: number; readonly dueAt: number; readonly interval: number },
  { near, ahead }: { readonly near: number; readonly ahead: number },
  counted: boolean,
): MeterState {
  if (isOver(meter, dueAt) && !counted) return 'overdue';
  const left = dueAt - meter;
  if (!isOver(left, near * interval)) return 'due';
  return isOver(left, ahead) ? 'later' : 'coming';
}

/** Every service of the list whose machine's meter was read, soonest first; the order of the list on a tie. */
export function meterLines(list: readonly DueLine[], inputs: ServiceInputs): MeterLine[] {
  const lines = list.flatMap((line): MeterLine[] => {
    const { meter, atMeter, interval, since } = line;
    if (meter === undefined || atMeter === undefined || interval === undefined) return [];
    const state = stateOf({ meter, dueAt: atMeter, interval }, inputs, since.from === 'counted');
    return [{ line, state, meter, dueAt: atMeter, left: atMeter - meter }];
  });
  return lines.sort((a, b) => a.left - b.left);
}

const stateWords: Readonly<Record<MeterState, string>> = {
  overdue: 'overdue',
  due: 'due now',
  coming: 'coming',
  later: 'later',
};
const levels = { overdue: 'caution', due: 'caution', coming: 'note', later: 'good' } as const;

/** The answer and its table; nothing where no meter was read. */
export function meterValues(list: readonly DueLine[], inputs: ServiceInputs): Value[] {
  const lines = meterLines(list, inputs);
  if (lines.length === 0) return [];
  const worst =
    (['overdue', 'due', 'coming', 'later'] as const).find((s) => lines.some((l) => l.state === s)) ?? 'later';
  const machines = new Set(lines.map((l) => l.line.machine)).size;
  const readings = new Set(lines.map((l) => l.meter));
  const name = ({ line }: MeterLine) => (machines === 1 ? line.task : `${line.machine}, ${line.task}`);
  const named = (state: MeterState) =>
    lines
      .filter((l) => l.state === state)
      .map(name)
      .join('; ');
  const verdict: VerdictValue = {
    kind: 'verdict',
    key: 'meter',
    label: 'By the hour meter',
    code: `meter-${worst}`,
    level: levels[worst],
    data: {
      ...(readings.size === 1 ? { reading: lines[0]?.meter ?? 0 } : {}),
      overdue: named('overdue'),
      due: named('due'),
      coming: named('coming'),
      next: lines[0] === undefined ? '' : name(lines[0]),
      nextAt: lines[0]?.dueAt ?? 0,
      counted: lines.some((l) => l.line.since.from === 'counted') ? 'yes' : 'no',
    },
    main: true,
  };
  return [verdict, meterTable(lines)];
}

function meterTable(lines: readonly MeterLine[]): TableValue {
  const hours = { units: ['h', 'h'], decimals: 1 } as const;
  return {
    kind: 'table',
    key: 'meterList',
    label: 'What is due by the hour meter',
    columns: [
      { key: 'state', label: 'State' },
      { key: 'machine', label: 'Machine' },
      { key: 'task', label: 'What is done' },
      { key: 'interval', label: 'Every', ...hours },
      { key: 'dueAt', label: 'Due at', ...hours },
      { key: 'left', label: 'Still to run', ...hours },
      { key: 'since', label: 'Last done' },
    ],
    rows: lines.map(({ line, state, dueAt, left }) => [
      stateWords[state],
      line.machine,
      line.task,
      line.interval ?? null,
      dueAt,
      left,
      line.since.from === 'counted' ? 'not known: counted from 0 h' : 'known',
    ]),
  };
}
