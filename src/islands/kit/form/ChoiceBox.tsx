/** One of a few: radios while they fit a glance, a list beyond that. Yes or no is the shortest such list. */
import type { ChoiceField, Option, YesNoField } from '../../../core/contract/field.ts';
import { valueHeld } from '../../../core/contract/asked.ts';
import { say } from '../../../words/index.ts';
import { describedBy, FieldFrame, ProblemLine } from './FieldFrame.tsx';
import { boxId, inkClass, type Form } from '../state/form.ts';

const fitsRadios = 4;
const yesNo: readonly Option[] = [
  { value: 'yes', label: say.yes },
  { value: 'no', label: say.no },
];

interface Props {
  readonly form: Form;
  readonly field: ChoiceField | YesNoField;
}

export function ChoiceBox({ form, field }: Props) {
  const held = valueHeld(field, form.raw[field.key]);
  const value = held === true ? 'yes' : held === false ? 'no' : String(held ?? '');
  const options = field.kind === 'choice' ? field.options : yesNo;
  const asRadios = options.length <= fitsRadios;
  return asRadios ? (
    <Radios form={form} field={field} options={options} value={value} />
  ) : (
    <List form={form} field={field} options={options} value={value} />
  );
}

interface Chosen extends Props {
  readonly options: readonly Option[];
  readonly value: string;
}

function Radios({ form, field, options, value }: Chosen) {
  const box = boxId(form.id, field.key);
  const problem = form.problemAt[field.key];
  return (
    <fieldset
      class={`calc-field calc-choice${inkClass(form, field.key)}${problem ? ' calc-wrong' : ''}`}
      aria-describedby={describedBy(form, field.key, undefined, field.help)}
    >
      <legend>
        {field.label}
        {field.optional && <span class="calc-optional"> {say.optional}</span>}
      </legend>
      {field.help && (
        <p class="calc-help" id={`${box}-help`}>
          {field.help}
        </p>
      )}
      {problem && <ProblemLine box={box} problem={problem} />}
      <div class={field.kind === 'yes-no' ? 'calc-radios calc-radios-short' : 'calc-radios'}>
        {options.map((o, i) => {
          const id = i === 0 ? box : `${box}-${o.value}`;
          return (
            <div class="calc-radio" key={o.value}>
              <input
                type="radio"
                id={id}
                name={box}
                value={o.value}
                checked={o.value === value}
                // A press on what is marked already confirms it; that is no change to the browser.
                onClick={() => form.type(field.key, o.value)}
                onChange={() => form.type(field.key, o.value)}
                aria-describedby={o.help ? `${box}-${o.value}-help` : undefined}
              />
              <label for={id}>
                {o.label}
                {o.help && (
                  <span class="calc-help" id={`${box}-${o.value}-help`}>
                    {o.help}
                  </span>
                )}
              </label>
            </div>
          );
        })}
      </div>
    </fieldset>
  );
}

function List({ form, field, options, value }: Chosen) {
  const box = boxId(form.id, field.key);
  const help = field.help ?? options.find((o) => o.value === value)?.help;
  return (
    <FieldFrame form={form} field={field} help={help} unit="">
      <SelectBox
        box={box}
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

export { yesNo };
