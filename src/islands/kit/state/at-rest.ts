/** What was typed and chosen in a form before its script had come; the boxes hold it, and are marked. */
import type { Field } from '../../../core/contract/field.ts';
import type { UnitSystem } from '../../../core/quantity/index.ts';
import { boxId } from './form.ts';

export interface AtRest {
  readonly typed: readonly { readonly path: string; readonly text: string }[];
  readonly system: UnitSystem | undefined;
  /** Box the reader is in. */
  readonly active: string | undefined;
}

/** Takes the marks away: each is taken up once. */
export function takeUpAtRest(id: string, fields: readonly Field[]): AtRest {
  const form = document.getElementById(`${id}-calculator`);
  const marked = [...(form?.querySelectorAll<HTMLInputElement | HTMLSelectElement>('[data-typed]') ?? [])];
  for (const box of marked) box.removeAttribute('data-typed');
  const switched = marked.find((box) => box.name === `${id}-units` && box.matches(':checked'))?.value;
  return {
    typed: marked.flatMap((box) => {
      const path = pathOf(box.id.replace(/-day$/, ''), id, fields);
      return path === undefined ? [] : [{ path, text: box.value }];
    }),
    system: switched === 'metric' || switched === 'inch' ? switched : undefined,
    active: pathOf(document.activeElement?.id ?? '', id, fields),
  };
}

/** From the id of a box back to its path: "repair-worth-lines-2-price" to "lines.2.price". */
function pathOf(box: string, id: string, fields: readonly Field[]): string | undefined {
  for (const field of fields) {
    if (field.kind !== 'rows') {
      if (box === boxId(id, field.key)) return field.key;
      continue;
    }
    for (const { key } of field.columns) {
      const row = /^\d+$/.exec(between(box, `${boxId(id, field.key)}-`, `-${key}`))?.[0];
      if (row !== undefined) return `${field.key}.${row}.${key}`;
    }
  }
  return undefined;
}

function between(text: string, start: string, end: string): string {
  return text.startsWith(start) && text.endsWith(end) ? text.slice(start.length, -end.length) : '';
}
