/** Hostile lines for the terminal: figures at and past their limits, texts that nearly read, shapes that do not fit. */
import type { Field, SingleField } from '../../core/contract/field.ts';
import { units } from '../../core/quantity/index.ts';
import type { Callable } from '../calc/answer-line.ts';
import type { Chance } from './random.ts';

const allUnits = Object.keys(units);
const texts = [
  '',
  ' ',
  '-',
  '.',
  ',',
  '1,234',
  '1.234,5',
  '1,2,3',
  "1'000",
  '1 000',
  '1e999',
  '1e-999',
  '-0',
  '+5',
  '0x10',
  '1_000',
  '٣',
  '５',
  '1/0',
  '0/1',
  '1-3/16',
  '1-5/4',
  '½',
  '1½"',
  '5 ft 3 in',
  '5 ft 3 ft',
  '1 + 1',
  '(1',
  '1)',
  '1 +',
  '* 2',
  '1 mm + 1 kg',
  '2 mm * 3 mm',
  '50:1',
  '1:0',
  '0:1',
  '2 %',
  '100 %',
  'NaN',
  'Infinity',
  '-Infinity',
  'null',
  'undefined',
  'true',
  '{}',
  '[]',
  '"',
  "'",
  '\\',
  '\u0000',
  '\u202e5',
  '\ud800',
  '<script>',
  '=1+1',
  '__proto__',
  'constructor',
  '11/25/2026',
  '31/02/2026',
  '2026-02-30',
  '9999-12-31',
  '0000-00-00',
  'H7',
  'h6',
  'ZC18',
  'k',
  '6204',
  '6204-2RS C3',
  '9'.repeat(400),
  '('.repeat(300),
  '1+'.repeat(300),
  'x'.repeat(5000),
] as const;
const values: readonly unknown[] = [
  0,
  -0,
  -1,
  1,
  1e-320,
  1e-12,
  1e12,
  1e60,
  1e61,
  1e300,
  1.7e308,
  0.1 + 0.2,
  true,
  false,
  null,
  [],
  {},
  [[]],
  [null],
  [{}],
  { a: 1 },
  [1, 2, 3],
];
const shapes = [
  '',
  '{',
  '}',
  '[]',
  '7',
  'null',
  '"x"',
  '{"a":}',
  '{"a":1,}',
  '{}{}',
  '\uFEFF{}',
  '{"__proto__":{"a":1}}',
  '{"constructor":1}',
  '[{}]',
  `{"a":${'['.repeat(3000)}${']'.repeat(3000)}}`,
  `${'['.repeat(3000)}`,
  '{"a":"\\ud800"}',
  '\u0000',
  'not json',
  "{'a':1}",
] as const;

/** One line for a topic or block; about one in twenty is no JSON object at all. */
export function hostileLine(callable: Callable, c: Chance): string {
  if (c.below(20) === 0) return c.oneOf(shapes);
  // Mostly sound with one or two wounds: those get furthest in.
  const wounds = c.oneOf([0, 1, 1, 2, 3, 99]);
  return JSON.stringify(record(callable.fields, wounds, c));
}

function record(fields: readonly Field[], wounds: number, c: Chance): Record<string, unknown> {
  const hurt = new Set(Array.from({ length: Math.min(wounds, fields.length) }, () => c.oneOf(fields).key));
  const line: Record<string, unknown> = {};
  for (const field of fields) {
    const value = hurt.has(field.key) ? wound(field, c) : sound(field, c);
    if (value !== undefined) line[field.key] = value;
  }
  if (c.below(30) === 0) line[c.oneOf(texts)] = c.oneOf(values);
  return line;
}

function wound(field: Field, c: Chance): unknown {
  const way = c.below(6);
  if (way === 0) return undefined;
  if (way === 1) return c.oneOf(values);
  if (way === 2) return c.oneOf(texts);
  if (way === 3) return `${c.oneOf(['1', '-1', '1e9', '3/8', '1,5', '1,234'])} ${c.oneOf(allUnits)}`;
  if (field.kind === 'rows')
    return Array.from({ length: c.oneOf([0, 1, 2, field.maxRows, field.maxRows + 1]) }, () =>
      c.below(4) === 0 ? c.oneOf(values) : record(field.columns, 1, c),
    );
  return edge(field, c);
}

/** At a limit, a last bit beside it, or clearly past it. */
function edge(field: SingleField, c: Chance): unknown {
  if (!('min' in field || 'max' in field)) return c.oneOf(texts);
  const limit = c.oneOf([field.min, field.max].filter((n) => n !== undefined));
  return c.oneOf([
    limit,
    limit * (1 + 2e-16),
    limit * (1 - 2e-16),
    limit + 1e-9,
    limit - 1e-9,
    limit * 1.01,
    -limit,
    limit - 1,
  ]);
}

function sound(field: Field, c: Chance): unknown {
  if (field.optional && c.below(3) === 0) return undefined;
  switch (field.kind) {
    case 'quantity':
    case 'number':
    case 'money': {
      const [min, max] = [field.min ?? 0, field.max ?? 1000];
      // Small sizes matter most, so the range is walked by its powers as well.
      return c.below(2) === 0 ? min + (max - min) * c.next() : min + (max - min) * 10 ** (-6 * c.next());
    }
    case 'count':
      return (field.min ?? 0) + c.below(Math.min(50, (field.max ?? 10) - (field.min ?? 0) + 1));
    case 'choice':
      return c.oneOf(field.options).value;
    case 'yes-no':
      return c.below(2) === 0;
    case 'text':
      return field.day ? '2026-03-14' : c.oneOf(['H7', 'k5', 'N7', 'js6', '6204', '6305', 'belt', 'cord']);
    case 'rows':
      return Array.from({ length: field.minRows + c.below(Math.min(4, field.maxRows - field.minRows + 1)) }, () =>
        record(field.columns, 0, c),
      );
  }
}
