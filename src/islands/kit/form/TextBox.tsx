/** A typed figure or word: quantities, numbers, counts, money and text share one box. */
import { useRef } from 'preact/hooks';
import type { SingleField } from '../../../core/contract/field.ts';
import { say } from '../../../words/kit.ts';
import { describedBy, FieldFrame } from './FieldFrame.tsx';
import { boxId, bringsUnit, textIn, unitOfBox, type Form } from '../state/form.ts';

interface Props {
  readonly form: Form;
  readonly field: SingleField;
}

export function TextBox({ form, field }: Props) {
  const box = boxId(form.id, field.key);
  const text = textIn(form, field);
  const unit = unitOfBox(form, field);
  return (
    <FieldFrame form={form} field={field} unit={unit}>
      <Box
        box={box}
        field={field}
        text={text}
        unit={unit}
        wrong={form.problemAt[field.key] !== undefined}
        describedBy={describedBy(form, field.key, field, field.help)}
        onText={(value, whole) => form.type(field.key, value, whole)}
        onEnter={() => form.enter(field.key)}
        onLeave={() => form.leave(field.key)}
      />
    </FieldFrame>
  );
}

interface BoxProps {
  readonly box: string;
  readonly field: SingleField;
  readonly text: string;
  /** Undefined in a row, where the column's head says it; empty keeps the place, so that boxes stand in one line. */
  readonly unit: string | undefined;
  readonly wrong: boolean;
  readonly describedBy: string | undefined;
  readonly onText: (text: string, whole: boolean) => void;
  readonly onEnter: () => void;
  readonly onLeave: () => void;
}

/** The box and the unit beside it; rows use it without a frame. */
export function Box({ box, field, text, unit, wrong, describedBy: described, onText, onEnter, onLeave }: BoxProps) {
  // Whether all of the old text was marked when the key came down: what replaces it is a figure of its own.
  const whole = useRef(false);
  const unitClass = bringsUnit(field, text) ? 'calc-unit calc-unit-off' : 'calc-unit';
  return (
    <div class={field.kind === 'text' ? 'calc-box calc-box-text' : 'calc-box'}>
      <input
        id={box}
        name={box}
        type="text"
        inputMode={field.kind === 'text' ? 'text' : field.kind === 'count' ? 'numeric' : 'decimal'}
        autocomplete="off"
        autocapitalize="off"
        spellcheck={false}
        value={text}
        aria-invalid={wrong ? 'true' : undefined}
        aria-describedby={described}
        onBeforeInput={({ currentTarget: at }) => {
          whole.current = at.value !== '' && at.selectionStart === 0 && at.selectionEnd === at.value.length;
        }}
        onInput={(e) => {
          onText(e.currentTarget.value, whole.current);
          whole.current = false;
        }}
        onFocus={onEnter}
        onBlur={onLeave}
      />
      {field.kind === 'text' && field.day && (
        <>
          <label class="calc-hidden" for={`${box}-day`}>
            {say.pickDay}
          </label>
          <input
            type="date"
            id={`${box}-day`}
            class="calc-day"
            value={/^\d{4}-\d\d-\d\d$/.test(text) ? text : ''}
            onClick={openCalendar}
            onInput={(e) => e.currentTarget.value && onText(e.currentTarget.value, true)}
          />
        </>
      )}
      {unit !== undefined && (
        <span class={unitClass} aria-hidden="true">
          {unit}
        </span>
      )}
    </div>
  );
}

/** Some open it for their own mark only, which is not seen here, some for every press: once, in every browser. */
function openCalendar(e: MouseEvent & { readonly currentTarget: HTMLInputElement }) {
  e.preventDefault();
  try {
    e.currentTarget.showPicker();
  } catch {
    // A press that no hand made opens nothing.
  }
}
