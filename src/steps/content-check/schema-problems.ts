/** What a schema finds, with line, value and what is allowed, in words a shop can act on. */
import type { z } from 'astro/zod';
import { didYouMean, shown, type Problem } from './problem.ts';
import type { Path, YamlText } from './yaml-text.ts';

type Schema = z.ZodType;
type Issue = z.core.$ZodIssue;

export function schemaProblems(file: string, yaml: YamlText, schema: Schema): Problem[] {
  const checked = schema.safeParse(yaml.data ?? {});
  if (checked.success) return [];
  return checked.error.issues.flatMap((issue) => toProblems(file, yaml, issue, schema));
}

function toProblems(file: string, yaml: YamlText, issue: Issue, schema: Schema): Problem[] {
  if (issue.code === 'unrecognized_keys')
    return issue.keys.map((key) => {
      const path = [...issue.path, key];
      const known = fieldsAt(schema, issue.path);
      const list =
        known.length > 0
          ? `one of the fields ${known.join(', ')}.${didYouMean(key, known)}`
          : 'a field that exists here';
      return {
        file,
        line: yaml.lineOf(path),
        field: path.join('.'),
        got: 'a field this kind of file does not have',
        allowed: list,
      };
    });
  const value = valueAt(yaml.data, issue.path);
  return [
    {
      file,
      line: yaml.lineOf(issue.path),
      field: issue.path.join('.') || 'the file',
      got: shown(value),
      allowed: allowedBy(issue, value),
    },
  ];
}

/** The fields that exist there; none where the schema does not list them. */
function fieldsAt(schema: unknown, path: Path): readonly string[] {
  const { shape, element } = partsOf(schema);
  const [step, ...rest] = path;
  if (step === undefined) return Object.keys(shape);
  return fieldsAt(typeof step === 'number' ? element : shape[String(step)], rest);
}

/** The keys of a record: listed where they are an enumeration's. */
interface EnumKeys {
  readonly def: { readonly entries?: Parts['shape'] };
}

interface Parts {
  readonly shape: Readonly<Record<string, unknown>>;
  readonly element?: unknown;
}

/** What a schema consists of, also of what may be left out, or that something is done with once it is read. */
function partsOf(schema: unknown): Parts {
  const def = (schema as { def?: Readonly<Record<string, unknown>> } | undefined)?.def ?? {};
  if (def['type'] === 'object') return { shape: def['shape'] as Parts['shape'] };
  if (def['type'] === 'array') return { shape: {}, element: def['element'] };
  if (def['type'] === 'record') return { shape: (def['keyType'] as EnumKeys).def.entries ?? {} };
  const inside = def['innerType'] ?? def['in'];
  return inside === undefined ? { shape: {} } : partsOf(inside);
}

function valueAt(data: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (value, step) => (value as Record<PropertyKey, unknown> | null | undefined)?.[step],
    data,
  );
}

function allowedBy(issue: Issue, value: unknown): string {
  switch (issue.code) {
    case 'invalid_type':
      return wantedType(issue.expected, value);
    case 'invalid_value':
      return `one of ${issue.values.map(String).join(', ')}.${typeof value === 'string' ? didYouMean(value, issue.values.map(String)) : ''}`;
    case 'too_small':
      if (!issue.inclusive) return `more than ${issue.minimum}`;
      return `at least ${issue.minimum}${unitOf(issue.origin)}`;
    case 'too_big':
      return `at most ${issue.maximum}${unitOf(issue.origin)}${typeof value === 'string' ? `; this has ${value.length}` : ''}`;
    case 'invalid_format':
      return issue.format === 'url' ? 'an address such as https://example.org/' : issue.message;
    default:
      return issue.message;
  }
}

function wantedType(expected: string, value: unknown): string {
  const kind = kinds[expected] ?? expected;
  if (value === undefined) return `this field is needed: ${kind}`;
  if (value === null)
    return `this field is needed: ${kind} after the colon${expected === 'string' ? ', in "quotes" if it starts with #' : ''}`;
  if (expected === 'string' && (typeof value === 'number' || typeof value === 'boolean'))
    return `text: put it in quotes, "${value}"`;
  // "42,50" and "21 %" are numbers to whoever wrote them.
  const meant = typeof value === 'string' ? /^[^\d,.]*(\d+)(?:[.,](\d+))?[^\d,.]*$/.exec(value) : null;
  if (expected === 'number' && meant)
    return `a number alone: ${meant[1]}${meant[2] === undefined ? '' : `.${meant[2]}`}`;
  return kind;
}

const kinds: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'a number',
  boolean: 'true or false',
  array: 'a list, one line each starting with "- "',
  object: 'fields indented below it',
};

function unitOf(origin: string): string {
  return origin === 'string' ? ' letters' : origin === 'array' ? ' in the list' : '';
}
