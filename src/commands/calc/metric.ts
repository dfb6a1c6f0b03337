/** Values of an answer as plain data: every figure in the metric unit that is named beside it. */
import { sayer } from '../../core/contract/messages.ts';
import type { TableColumn, TableValue, Value, VerdictValue } from '../../core/contract/result.ts';
import type { Say, Words } from '../../core/contract/words.ts';
import { toUnit, unitLabel, type UnitKey, type UnitPair } from '../../core/quantity/index.ts';

/**
 * A figure without the dust of binary arithmetic: at most ten significant digits, what a difference of two measured sizes keeps.
 * Example: clean(25.000000000000004) -> 25.
 */
export function clean(value: number): number {
  return Number(value.toPrecision(10));
}

function inUnit(si: number, unit: UnitKey): number {
  return clean(toUnit(si, unit));
}

export interface Around {
  /** The topic's. */
  readonly words: Words;
  /** ISO 4217 code of all money. */
  readonly currency: string;
  /** Every value of the answer: a verdict's data may repeat one of them. */
  readonly values: readonly Value[];
}

/** One value, ready for JSON. @param value of an answer @param around what its units and words are found in */
export function valueOut(value: Value, around: Around): Readonly<Record<string, unknown>> {
  const { currency } = around;
  const { key: _key, ...rest } = value;
  switch (rest.kind) {
    case 'quantity': {
      const { units, decimals: _decimals, figures: _figures, value: si, low, high, ...named } = rest;
      return {
        ...named,
        value: inUnit(si, units[0]),
        ...(low === undefined ? {} : { low: inUnit(low, units[0]) }),
        ...(high === undefined ? {} : { high: inUnit(high, units[0]) }),
        unit: unitLabel(units[0]),
        si,
      };
    }
    case 'number':
    case 'count':
    case 'money': {
      const { decimals: _decimals, value: n, low, high, ...named } = rest;
      return {
        ...named,
        value: clean(n),
        ...(low === undefined ? {} : { low: clean(low) }),
        ...(high === undefined ? {} : { high: clean(high) }),
        ...(rest.kind === 'money' ? { currency } : {}),
      };
    }
    case 'table':
      return tableOut(rest, currency);
    case 'verdict':
      return verdictOut(rest, around);
    case 'text':
      return rest;
  }
}

function tableOut(table: Omit<TableValue, 'key'>, currency: string): Readonly<Record<string, unknown>> {
  return {
    ...table,
    columns: table.columns.map(({ units, decimals: _decimals, money, ...column }) => ({
      ...column,
      ...(units ? { unit: unitLabel(units[0]) } : {}),
      ...(money ? { currency } : {}),
    })),
    rows: table.rows.map((row) => row.map((cell, i) => cellOut(cell, table.columns[i]))),
  };
}

function cellOut(cell: number | string | null, column: TableColumn | undefined): number | string | null {
  if (typeof cell !== 'number') return cell;
  return column?.units ? inUnit(cell, column.units[0]) : clean(cell);
}

type Unit = UnitPair | 'money';

/**
 * The figures of a verdict carry no unit of their own. Its sentence knows how each is said, so it is listened to;
 * a figure it does not say may stand in the answer as a value; the topic's words name the unit of the rest.
 */
function verdictOut(verdict: Omit<VerdictValue, 'key'>, around: Around): Readonly<Record<string, unknown>> {
  const { data, ...rest } = verdict;
  const { heard, says } = listen(verdict, around);
  if (!data) return { ...rest, says };
  const unitOf = (key: string, value: number) =>
    around.words.figures?.[key] ?? heard.get(value) ?? unitInAnswer(value, around.values);
  const figures = Object.entries(data).map(([key, value]) => [
    key,
    typeof value === 'string' ? value : figureOut(value, unitOf(key, value), around.currency),
  ]);
  return { ...rest, data: Object.fromEntries(figures) as Record<string, unknown>, says };
}

function listen({ code, data = {} }: Omit<VerdictValue, 'key'>, { words, currency }: Around) {
  const heard = new Map<number, Unit>();
  const plain = sayer({ currency });
  const say: Say = {
    ...plain,
    quantity: (si, pair, figures) => {
      heard.set(si, pair);
      return plain.quantity(si, pair, figures);
    },
    money: (amount) => {
      heard.set(amount, 'money');
      return plain.money(amount);
    },
  };
  return { heard, says: words.verdicts[code]?.(data, say) };
}

/** Equal to the last bit, and not a round figure that anything may be. */
function unitInAnswer(value: number, values: readonly Value[]): Unit | undefined {
  if (Number.isInteger(value)) return undefined;
  for (const v of values) {
    const repeats = 'value' in v && (v.value === value || ('low' in v && (v.low === value || v.high === value)));
    if (repeats && v.kind === 'money') return 'money';
    if (repeats && v.kind === 'quantity') return v.units;
  }
  return undefined;
}

function figureOut(value: number, unit: Unit | undefined, currency: string): Readonly<Record<string, unknown>> {
  if (unit === 'money') return { value: clean(value), currency };
  return unit ? { value: inUnit(value, unit[0]), unit: unitLabel(unit[0]) } : { value: clean(value) };
}
