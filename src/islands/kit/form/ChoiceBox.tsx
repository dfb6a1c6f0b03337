/** One of a few, as a list: it takes the room of one box, and what was chosen is read like any other figure. */
import { valueHeld } from '../../../core/contract/asked.ts';
import type { ChoiceField, Option, YesNoField } from '../../../core/contract/field.ts';
import { say } from '../../../words/kit.ts';
import { boxId, type Form } from '../state/form.ts';
import { describedBy, FieldFrame } from './FieldFrame.tsx';

export const yesNo: readonly Option[] = [
  { value: 'yes', label: say.yes },
  { value: 'no', label: say.no },
];

interface Props {
  readonly form: Form;
  readonly field: ChoiceField | YesNoField;
}

export function ChoiceBox({ form, field }: Props) {
  const held = valueHeld(field, form.raw[field.key]);
  const value = held === true ? 'yes' : held === false ? 'no' : typeof held === 'string' ? held : '';
  const options = field.kind === 'choice' ? field.options : yesNo;
  const help = [field.help, options.find((o) => o.value === value)?.help].filter(Boolean).join(' ') || undefined;
  return (
    <FieldFrame form={form} field={field} help={help} unit="">
      <SelectBox
        box={boxId(form.id, field.key)}
        options={options}
        value={value}
        empty={value === '' || field.optional === true}
        wrong={form.problemAt[field.key] !== undefined}
        describedBy={describedBy(form, field.key, undefined, help)}
        onChoose={(v) => form.type(field.key, v)}
      />
    </FieldFrame>
  );
}

interface SelectProps {
  readonly box: string;
  readonly options: readonly Option[];
  readonly value: string;
  readonly empty: boolean;
  readonly wrong: boolean;
  readonly describedBy: string | undefined;
  readonly onChoose: (value: string) => void;
}

export function SelectBox({ box, options, value, empty, wrong, describedBy: described, onChoose }: SelectProps) {
  return (
    <div class="calc-box calc-box-list">
      <select
        id={box}
        name={box}
        aria-invalid={wrong ? 'true' : undefined}
        aria-describedby={described}
        onChange={(e) => onChoose(e.currentTarget.value)}
      >
        {empty && (
          <option value="" selected={value === ''}>
            {say.choose}
          </option>
        )}
        {options.map((o) => (
          <option value={o.value} key={o.value} selected={o.value === value}>
            {o.label}
          </option>
        ))}
      </select>
    </div>
  );
}
