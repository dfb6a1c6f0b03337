/**
 * The words for every problem code all topics share. A topic's own codes stand in its `words.ts`.
 * Style: name the field in its label's words, say what was received, say what is allowed.
 */
import type { Field, SingleField } from './field.ts';
import {
  dimensions,
  formatQuantity,
  fromUnit,
  pick,
  toUnit,
  unitLabel,
  type Dimension,
  type UnitSystem,
} from '../quantity/index.ts';
import { sayMoney } from './currency.ts';
import type { Problem } from './result.ts';
import type { Say, Words } from './words.ts';

export interface MessageContext {
  readonly fields: readonly Field[];
  readonly words?: Words;
  readonly system?: UnitSystem;
  /** ISO 4217; US dollars if not given. */
  readonly currency?: string;
  /** Language amounts of money are written in; "en" if not given. */
  readonly lang?: string;
}

interface Place {
  readonly field: Field | SingleField | undefined;
  /** "Bore", or "Row 2, Price". */
  readonly label: string;
}

/**
 * The sentence for a problem: names the field, says what was received and what is allowed.
 * @param problem from reading, checking or computing @param context the topic's fields and words, the reader's units,
 * currency and language @returns one or two sentences
 * @throws Error for a code without words: a fault of the topic, found by its tests
 */
export function describeProblem(problem: Problem, context: MessageContext): string {
  const place = findPlace(problem, context.fields);
  const own = context.words?.problems[problem.code];
  if (own) return own(problem.data ?? {}, sayer(context));
  const shared = sentences[problem.code];
  if (!shared) throw new Error(`No words for the problem code "${problem.code}".`);
  return shared({
    ...place,
    data: problem.data ?? {},
    readings: problem.readings ?? [],
    system: context.system ?? 'metric',
    name: problem.field,
  });
}

/**
 * How figures are said to one reader.
 * @param context units (metric if not given), currency (USD), language of money (en)
 * @returns the functions that write quantities [from SI] and money
 */
export function sayer(context: Pick<MessageContext, 'system' | 'currency' | 'lang'>): Say {
  const system = context.system ?? 'metric';
  return {
    system,
    quantity: (si, pair, figures) => formatQuantity(si, pair, system, undefined, figures),
    money: (amount) => sayMoney(amount, context.currency ?? 'USD', context.lang),
  };
}

function findPlace(problem: Problem, fields: readonly Field[]): Place {
  const [key, row, column] = problem.field.split('.');
  const field = fields.find((f) => f.key === key);
  if (!field) return { field: undefined, label: problem.field };
  if (field.kind !== 'rows' || row === undefined) return { field, label: field.label };
  const cell = field.columns.find((c) => c.key === column);
  return { field: cell, label: `${cell?.label ?? column} (${lower(field.label)}, row ${row})` };
}

interface Spoken extends Place {
  readonly data: Readonly<Record<string, number | string>>;
  readonly readings: readonly string[];
  readonly system: UnitSystem;
  readonly name: string;
}

/** Limits are kept in the metric unit; say them in the reader's. */
function limit({ field, data, system }: Spoken, key: 'min' | 'max' | 'got'): string {
  const n = Number(data[key]);
  if (field?.kind !== 'quantity') return String(Number(n.toPrecision(7)));
  const unit = pick(field.units, system);
  // What was received is said in more figures than the limit, so that 500.01 is not refused as 500.
  return `${Number(toUnit(fromUnit(n, field.units[0]), unit).toPrecision(key === 'got' ? 8 : 5))} ${unitLabel(unit)}`.trim();
}

function range(s: Spoken): string {
  const field = s.field;
  if (!field || !('min' in field || 'max' in field)) return '';
  const low = field.min === undefined ? undefined : limit({ ...s, data: { min: field.min } }, 'min');
  const high = field.max === undefined ? undefined : limit({ ...s, data: { max: field.max } }, 'max');
  const above = 'above' in field && field.above === true;
  if (low !== undefined && high !== undefined)
    return above ? `more than ${low} and at most ${high}` : `between ${low} and ${high}`;
  return low !== undefined ? `${above ? 'more than' : 'at least'} ${low}` : `at most ${high}`;
}

function dimensionWord(name: string): string {
  const key = name as Dimension;
  return key === 'rotation' ? 'a speed of rotation' : key in dimensions ? `a ${key.replaceAll('-', ' ')}` : name;
}

function exampleFor({ field, system }: Spoken): string {
  if (field?.kind !== 'quantity') return 'a number, like 30';
  const unit = pick(field.units, system);
  const value = Number(toUnit(fromUnit(typicalOf(field), field.units[0]), unit).toPrecision(field.default ? 3 : 2));
  return `a number, like ${value} or ${value} ${unitLabel(unit)}`;
}

/** A figure people might type into a box, in its metric unit: its default, or one amid its limits. */
function typicalOf({ default: usual, min = 0, max }: Extract<Field, { kind: 'quantity' }>): number {
  if (usual) return usual;
  if (max === undefined) return min || 1;
  const amid = Number((min > 0 ? Math.sqrt(min * max) : max / 10).toPrecision(1));
  return amid > min && amid < max ? amid : min || max;
}

const sentences: Readonly<Record<string, (s: Spoken) => string>> = {
  missing: ({ label }) => `Enter the ${lower(label)}.`,
  'not-a-number': (s) => `${s.label} must be ${exampleFor(s)}; "${s.data['got']}" is not.`,
  'two-points': (s) => `${s.label}: "${s.data['got']}" has more than one decimal point. Write it with one, like 1.23.`,
  'two-readings': (s) =>
    `${s.label}: "${s.data['got']}" can be read as ${s.readings.join(' or as ') || 'two things'}. Write the one you mean.`,
  'no-reading-fits': (s) =>
    `${s.label} must be ${range(s)}; "${s.data['got']}", read as ${s.readings.join(' or as ')}, is not.`,
  'mixed-fraction': (s) =>
    `${s.label}: in "${s.data['got']}" the fraction is not smaller than one. Write it like 1-3/16.`,
  'zero-denominator': (s) => `${s.label}: "${s.data['got']}" divides by zero.`,
  'unknown-unit': (s) => `${s.label}: the unit in "${s.data['got']}" is not known here. Try ${exampleUnits(s)}.`,
  'wrong-dimension': (s) =>
    `${s.label} must be ${dimensionWord(String(s.data['wanted']))}; "${s.data['got']}" is ${dimensionWord(String(s.data['is']))}. Try ${exampleUnits(s)}.`,
  'not-one-quantity': (s) =>
    `${s.label}: "${s.data['got']}" is not one measure. Write it like 5 ft 3 in, or as a sum with + between.`,
  'unit-each': (s) => `${s.label}: in the sum "${s.data['got']}" give every part its unit, like 3/8 in + 0.002 in.`,
  'sum-not-readable': (s) =>
    `${s.label}: the sum "${s.data['got']}" can't be worked out. Write it like 3/8 in + 0.002 in.`,
  'sum-not-loaded': (s) =>
    `${s.label}: the part that works out sums did not load. Change the box to try again, or write the outcome of "${s.data['got']}".`,
  'sum-wrong-dimension': (s) =>
    `${s.label}: the sum "${s.data['got']}" does not come to ${dimensionWord(s.field?.kind === 'quantity' ? s.field.dimension : 'a number')}.`,
  'no-temperature-sum': (s) => `${s.label}: temperatures are not added up. Write one temperature, like 20 °C.`,
  'no-unit-wanted': (s) => `${s.label} must be a plain number without a unit, like 30; "${s.data['got']}" is not.`,
  'too-small': (s) => `${s.label} must be ${range(s)}; ${limit(s, 'got')} is too small.`,
  'not-above': (s) => `${s.label} must be ${range(s)}; ${limit(s, 'got')} is not.`,
  'too-large': (s) => `${s.label} must be ${range(s)}; ${limit(s, 'got')} is too large.`,
  'beyond-measure': (s) => `${s.label}: ${s.data['got']} is beyond anything that can be measured.`,
  'not-whole': (s) => `${s.label} must be a whole number, like 2; ${s.data['got']} is not.`,
  'not-a-choice': (s) => `${s.label}: "${s.data['got']}" is not one of the choices: ${choices(s)}.`,
  'not-yes-no': (s) => `${s.label} must be yes or no; "${s.data['got']}" is neither.`,
  'not-text': (s) => `${s.label} must be text; "${s.data['got']}" is not.`,
  'too-long': (s) => `${s.label} must have at most ${s.data['max']} characters; it has ${s.data['got']}.`,
  'not-the-pattern': (s) =>
    `${s.label} must be ${s.field?.kind === 'text' && s.field.patternSays ? s.field.patternSays : 'written another way'}; "${s.data['got']}" is not.`,
  'not-a-day': (s) => `${s.label} must be a day, like 2026-11-25; "${s.data['got']}" is not.`,
  'no-such-day': (s) => `${s.label}: there is no day "${s.data['got']}". Write it like 2026-11-25.`,
  'not-rows': ({ label }) => `${label} must be a list of rows.`,
  'not-a-row': ({ label, data }) => `${label}, row ${data['row']}: ${data['got']} is not a row of named figures.`,
  'too-few-rows': ({ label, data }) =>
    `${label} needs at least ${data['min']} ${Number(data['min']) === 1 ? 'row' : 'rows'}; it has ${data['got']}.`,
  'too-many-rows': ({ label, data }) => `${label} takes at most ${data['max']} rows; it has ${data['got']}.`,
  'unknown-field': ({ name, data }) => `There is no field called "${name}". Allowed: ${data['allowed']}.`,
  'no-number': ({ data }) =>
    `These figures together give no number for ${data['value']}. Check that none of them is out of the ordinary.`,
};

export const sharedProblemCodes: readonly string[] = Object.keys(sentences);

function lower(label: string): string {
  return /^[A-Z][a-z]/.test(label) ? label[0]?.toLowerCase() + label.slice(1) : label;
}

function exampleUnits({ field }: Spoken): string {
  if (field?.kind !== 'quantity') return 'a plain number';
  return [...new Set(field.units)].map((u) => unitLabel(u) || 'a plain number').join(' or ');
}

function choices({ field }: Spoken): string {
  return field?.kind === 'choice' ? field.options.map((o) => o.value).join(', ') : '';
}
