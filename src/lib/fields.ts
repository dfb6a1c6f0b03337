/** What a schema asks for, as rows for a table: read from the schema itself, so that the page cannot say anything else. */
import { z } from 'astro/zod';

export interface FieldRow {
  /** "checks[].tells[].suspect" */
  readonly name: string;
  /** "text, at most 70 letters" */
  readonly takes: string;
  readonly needed: boolean;
  /** What it is for, in the words of the schema. */
  readonly says: string;
}

/** The part of a JSON Schema (draft 2020-12) that zod writes for these schemas. */
interface Node {
  readonly type?: string;
  readonly description?: string;
  readonly properties?: Readonly<Record<string, Node>>;
  readonly required?: readonly string[];
  readonly additionalProperties?: Node | boolean;
  readonly propertyNames?: Node;
  readonly items?: Node;
  readonly anyOf?: readonly Node[];
  readonly allOf?: readonly Node[];
  readonly enum?: readonly unknown[];
  readonly const?: unknown;
  readonly default?: unknown;
  readonly maxLength?: number;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly minItems?: number;
  readonly maxItems?: number;
  readonly format?: string;
}

export function fieldRows(schema: z.ZodType): readonly FieldRow[] {
  const whole = z.toJSONSchema(schema, { io: 'input', unrepresentable: 'any', reused: 'inline' }) as Node;
  return rowsOf(whole, '');
}

function rowsOf(node: Node, before: string): FieldRow[] {
  return Object.entries(node.properties ?? {}).flatMap(([name, field]) => {
    const needed = (node.required ?? []).includes(name) && field.default === undefined;
    const row = {
      name: before + name,
      takes: takes(field),
      needed,
      says: (field.description ?? '').replaceAll('`', ''),
    };
    return [row, ...inside(field, before + name)];
  });
}

/** Fields within a field; the twin in another language has the same ones again. */
function inside(field: Node, name: string): FieldRow[] {
  if (/(?:^|\.)es$/.test(name)) return [];
  if (field.properties) return rowsOf(field, `${name}.`);
  if (field.items?.properties) return rowsOf(field.items, `${name}[].`);
  return [];
}

function takes(field: Node): string {
  const usual = field.default;
  const empty = Array.isArray(usual) ? usual.length === 0 : typeof usual === 'object' && usual !== null;
  const without = usual === undefined || empty ? '' : `; without it ${JSON.stringify(usual)}`;
  return kindOf(field) + without;
}

/** The one thing a schema here takes that JSON has no type for. */
const aDay = 'a day, as YYYY-MM-DD';

function kindOf(field: Node): string {
  if (field.const !== undefined) return JSON.stringify(field.const);
  if (field.enum) return field.enum.map(String).join(', ');
  if (field.anyOf?.some((one) => one.type === undefined && !one.anyOf && !one.enum)) return aDay;
  if (field.anyOf) return [...new Set(field.anyOf.map(kindOf))].join(', or ');
  switch (field.type) {
    case 'string':
      return field.format === 'uri'
        ? 'an address'
        : `text${field.maxLength ? `, at most ${field.maxLength} letters` : ''}`;
    case 'number':
    case 'integer':
      return numberOf(field);
    case 'boolean':
      return 'true or false';
    case 'array':
      return `a list${sizeOf(field)} of: ${field.items ? kindOf(field.items) : 'anything'}`;
    case 'object':
      return field.properties ? 'fields of its own, below' : `names${namesOf(field)}, each with its own`;
    default:
      return aDay;
  }
}

function numberOf({ type, minimum, maximum }: Node): string {
  const what = type === 'integer' ? 'a whole number' : 'a number';
  const least = minimum === undefined || minimum <= Number.MIN_SAFE_INTEGER ? undefined : minimum;
  const most = maximum === undefined || maximum >= Number.MAX_SAFE_INTEGER ? undefined : maximum;
  if (least !== undefined && most !== undefined) return `${what}, ${least} to ${most}`;
  if (least !== undefined) return `${what}, ${least} or more`;
  return most === undefined ? what : `${what}, ${most} or less`;
}

function sizeOf({ minItems, maxItems }: Node): string {
  if (minItems !== undefined && maxItems !== undefined) return `, ${minItems} to ${maxItems},`;
  if (minItems !== undefined) return `, ${minItems} or more,`;
  return maxItems === undefined ? '' : `, ${maxItems} or fewer,`;
}

function namesOf({ propertyNames }: Node): string {
  return propertyNames?.enum ? ` from ${propertyNames.enum.map(String).join(', ')}` : '';
}
