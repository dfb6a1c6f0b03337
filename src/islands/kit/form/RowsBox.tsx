/** A short table the reader fills in. A table where there is room, one block per row on a phone. */
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { RowsField } from '../../../core/contract/field.ts';
import { rowsAt } from '../state/figures.ts';
import { say } from '../../../words/kit.ts';
import { RowCell } from './RowCell.tsx';
import { ProblemLine } from './FieldFrame.tsx';
import { boxId, unitBeside, type Form } from '../state/form.ts';

/** More columns than this do not fit beside the answer. */
export const few = 4;

export function hasLongRows(field: RowsField): boolean {
  return field.columns.length > few;
}

interface Props {
  readonly form: Form;
  readonly field: RowsField;
}

export function RowsBox({ form, field }: Props) {
  const box = boxId(form.id, field.key);
  const rows = rowsAt(form.figures.entries, field);
  const problem = form.problemAt[field.key];

  const goTo = useRef<string>();
  useLayoutEffect(() => {
    if (goTo.current) document.getElementById(goTo.current)?.focus();
    goTo.current = undefined;
  });
  const firstCell = (row: number) => boxId(form.id, `${field.key}.${row}.${field.columns[0]?.key ?? ''}`);
  const add = () => {
    goTo.current = firstCell(rows.length + 1);
    form.addRow(field.key);
  };
  const remove = (at: number) => {
    goTo.current = firstCell(Math.max(1, at));
    form.removeRow(field.key, at);
  };

  return (
    <fieldset
      class={`calc-field calc-rows${hasLongRows(field) ? ' calc-rows-long' : ''}${problem ? ' calc-wrong' : ''}`}
      id={box}
      tabIndex={-1}
      aria-describedby={field.help && `${box}-help`}
    >
      <legend>
        {field.label}
        {field.optional && <span class="calc-optional"> {say.optional}</span>}
      </legend>
      {problem && <ProblemLine box={box} problem={problem} />}
      <table>
        <thead>
          <tr>
            {field.columns.map((c) => (
              <th scope="col" key={c.key}>
                {c.label}
                <HeadUnit unit={unitBeside(c, form.figures.system, form.currency)} />
              </th>
            ))}
            <th scope="col">
              <span class="calc-hidden">{say.removeColumn}</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map((_, i) => (
            <tr key={i}>
              {field.columns.map((c) => (
                <RowCell key={c.key} form={form} rows={field.key} row={i + 1} column={c} />
              ))}
              <td class="calc-row-end">
                <button
                  type="button"
                  class="calc-remove"
                  disabled={rows.length <= field.minRows}
                  onClick={() => remove(i)}
                  aria-label={say.removeRow(i + 1)}
                >
                  ×
                </button>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {field.help && (
        <p class="calc-help" id={`${box}-help`}>
          {field.help}
        </p>
      )}
      <button type="button" class="calc-button" disabled={rows.length >= field.maxRows} onClick={add}>
        {say.addRow}
      </button>
    </fieldset>
  );
}

function HeadUnit({ unit }: { readonly unit: string }) {
  return unit ? <span class="calc-head-unit"> ({unit})</span> : null;
}
