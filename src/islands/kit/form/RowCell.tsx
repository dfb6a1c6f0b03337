/** One box of a row, with a label of its own: "Price, row 2". */
import type { SingleField } from '../../../core/contract/field.ts';
import type { UnitSystem } from '../../../core/quantity/index.ts';
import { say } from '../../../words/index.ts';
import { SelectBox, yesNo } from './ChoiceBox.tsx';
import { describedBy, ProblemLine } from './FieldFrame.tsx';
import { boxId, unitBeside, type Form } from '../state/form.ts';
import { Box } from './TextBox.tsx';

interface Props {
  readonly form: Form;
  readonly rows: string;
  /** From 1. */
  readonly row: number;
  readonly column: SingleField;
  readonly text: string;
  readonly system: UnitSystem;
  readonly onText: (text: string) => void;
}

export function RowCell({ form, rows, row, column, text, system, onText }: Props) {
  const path = `${rows}.${row}.${column.key}`;
  const box = boxId(form.id, path);
  const problem = form.problemAt[path];
  const unit = unitBeside(column, system, form.currency);
  const described = describedBy(box, { problem });
  const wrong = problem !== undefined;
  return (
    <td class={`calc-cell calc-cell-${column.kind}`}>
      <label for={box}>
        {column.label}
        {unit && ` (${unit})`}
        <span class="calc-hidden">, {say.row(row).toLowerCase()}</span>
      </label>
      {column.kind === 'choice' || column.kind === 'yes-no' ? (
        <SelectBox
          box={box}
          options={column.kind === 'choice' ? column.options : yesNo}
          value={asChoice(text)}
          empty={text === '' || column.optional === true}
          wrong={wrong}
          describedBy={described}
          onChoose={onText}
        />
      ) : (
        <Box
          box={box}
          field={column}
          text={text}
          unit={undefined}
          wrong={wrong}
          describedBy={described}
          onText={onText}
          onEnter={() => form.enter(path)}
          onLeave={() => form.leave(path)}
        />
      )}
      {problem && <ProblemLine box={box} problem={problem} />}
    </td>
  );
}

function asChoice(text: string): string {
  return text === 'true' ? 'yes' : text === 'false' ? 'no' : text;
}
