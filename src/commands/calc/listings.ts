/** What exists, for a person or a script at the terminal. */
import type { Field } from '../../core/contract/field.ts';
import { unitLabel } from '../../core/quantity/index.ts';
import type { Topic } from '../../core/contract/topic.ts';

export function listTopics(topics: Readonly<Record<string, Topic>>): string {
  return Object.entries(topics)
    .flatMap(([name, topic]) => [
      `${name}  ${topic.title}`,
      ...Object.entries(topic.blocks).map(([b, { what }]) => `  ${name}/${b}  ${what}`),
    ])
    .join('\n');
}

/** The fields as data, with units as people write them. */
export function listFields(fields: readonly Field[]): unknown[] {
  return fields.map((field) => {
    if (field.kind === 'quantity') return { ...field, units: field.units.map(unitLabel) };
    if (field.kind === 'rows') return { ...field, columns: listFields(field.columns) };
    return field;
  });
}
