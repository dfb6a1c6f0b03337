/** One figure of a saw: a box, or a choice with "not known" first. */
import type { SingleField } from '../../core/contract/field.ts';
import { unitLabel } from '../../core/quantity/index.ts';
import { ownSawWords as say } from '../../words/own-saws.ts';

interface Props {
  readonly field: SingleField;
  readonly text: string;
  readonly problem: string | undefined;
  readonly onText: (text: string) => void;
}

export function FactBox({ field, text, problem, onText }: Props) {
  const id = `saw-${field.key}`;
  const more = problem ?? field.help;
  const unit = field.kind === 'quantity' ? unitLabel(field.units[0]) : '';
  return (
    <div class="saws-box">
      <label for={id}>
        {field.label}
        {unit && <span class="saws-quiet"> ({unit})</span>}
      </label>
      {field.kind === 'choice' || field.kind === 'yes-no' ? (
        <select id={id} value={text} onChange={(e) => onText(e.currentTarget.value)}>
          <option value="">{say.choose}</option>
          {(field.kind === 'choice'
            ? field.options
            : [
                { value: 'yes', label: say.yes },
                { value: 'no', label: say.no },
              ]
          ).map((o) => (
            <option key={o.value} value={o.value}>
              {o.label}
            </option>
          ))}
        </select>
      ) : (
        <input
          id={id}
          type="text"
          inputMode={field.kind === 'text' ? 'text' : 'decimal'}
          autocomplete="off"
          maxLength={60}
          value={text}
          aria-invalid={problem ? true : undefined}
          aria-describedby={more ? `${id}-more` : undefined}
          onInput={(e) => onText(e.currentTarget.value)}
        />
      )}
      {more && (
        <p id={`${id}-more`} class={problem ? 'saws-problem' : 'saws-quiet'}>
          {more}
        </p>
      )}
    </div>
  );
}
