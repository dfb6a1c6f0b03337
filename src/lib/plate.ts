/** What a machine's plate says, as rows for a table: the figures by group, each with where it comes from. */
import { textOf } from '../core/contract/text-of.ts';
import { facts, origins, readFacts, type Facts } from '../core/machine/index.ts';
import { formatQuantity } from '../core/quantity/index.ts';
import type { Shop } from '../schemas/shop.ts';

export interface PlateRow {
  readonly group: string;
  readonly label: string;
  readonly value: string;
  readonly from: string;
}

export function plateRows(known: Facts, units: Shop['units']): readonly PlateRow[] {
  const read = readFacts(known);
  if (!read.ok) throw new Error('The figures of a machine passed the content check and cannot be read here.');
  return facts.flatMap((field): PlateRow[] => {
    const fact = known[field.key];
    const value = read.inputs[field.key];
    if (fact === undefined || value === undefined) return [];
    return [{ group: field.group, label: field.label, value: said(field, value), from: origins[fact.from] }];

    function said(asked: (typeof facts)[number], input: NonNullable<typeof value>): string {
      if (asked.kind === 'quantity' && typeof input === 'number') {
        const [first, second] = units === 'metric' ? (['metric', 'inch'] as const) : (['inch', 'metric'] as const);
        const texts = [first, second].map((system) => formatQuantity(input, asked.units, system));
        return texts[0] === texts[1] ? (texts[0] ?? '') : `${texts[0] ?? ''} (${texts[1] ?? ''})`;
      }
      if (asked.kind === 'choice') return asked.options.find((o) => o.value === input)?.label ?? textOf(input);
      if (asked.kind === 'yes-no') return input === true ? 'yes' : 'no';
      return textOf(input);
    }
  });
}
