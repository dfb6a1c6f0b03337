/** One box of a row, with a label of its own: "Price, row 2". */
import { useMemo } from 'preact/hooks';
import type { SingleField } from '../../../core/contract/field.ts';
import { say } from '../../../words/kit.ts';
import { SelectBox, yesNo } from './ChoiceBox.tsx';
import { describedBy, UnderLine } from './FieldFrame.tsx';
import { boxId, inkClass, shownAt, textIn, unitOfBox, type Form } from '../state/form.ts';
import { Box } from './TextBox.tsx';

interface Props {
  readonly form: Form;
  readonly rows: string;
  /** From 1. */
  readonly row: number;
  readonly column: SingleField;
}

/** Made again only when something it shows has changed, as single boxes are. */
export function RowCell(props: Props) {
  const { form, rows, row, column } = props;
  const shown = shownAt(form, `${rows}.${row}.${column.key}`);
  // eslint-disable-next-line react-hooks/exhaustive-deps
  return useMemo(() => <MadeCell {...props} />, [rows, row, column, shown]);
}

function MadeCell({ form, rows, row, column }: Props) {
  const path = `${rows}.${row}.${column.key}`;
  const box = boxId(form.id, path);
  const text = textIn(form, column, path);
  const unit = unitOfBox(form, column, path);
  const described = describedBy(form, path, column);
  const wrong = form.problemAt[path] !== undefined;
  return (
    <td class={`calc-cell calc-cell-${column.kind}${inkClass(form, path)}`}>
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
          onChoose={(value) => form.type(path, value)}
        />
      ) : (
        <Box
          box={box}
          field={column}
          text={text}
          unit={undefined}
          wrong={wrong}
          describedBy={described}
          onText={(value, whole) => form.type(path, value, whole)}
          onEnter={() => form.enter(path)}
          onLeave={() => form.leave(path)}
        />
      )}
      <UnderLine form={form} field={column} path={path} />
    </td>
  );
}

function asChoice(text: string): string {
  return text === 'true' ? 'yes' : text === 'false' ? 'no' : text;
}
