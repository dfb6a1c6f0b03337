/** A labelled box of a sheet: words for the paper, which no calculation reads. */
interface Props {
  readonly id: string;
  readonly label: string;
  readonly help?: string;
  readonly value: string;
  readonly type?: 'text' | 'date' | 'number';
  readonly onText: (text: string) => void;
}

export function DeskBox({ id, label, help, value, type = 'text', onText }: Props) {
  return (
    <div class="calc-field">
      <div class="calc-asks">
        <label for={id}>{label}</label>
        {help && (
          <p class="calc-help" id={`${id}-help`}>
            {help}
          </p>
        )}
      </div>
      <div class="calc-box calc-box-text desk-box">
        <input
          id={id}
          type={type}
          min={type === 'number' ? 1 : undefined}
          max={type === 'number' ? 365 : undefined}
          autocomplete="off"
          value={value}
          aria-describedby={help ? `${id}-help` : undefined}
          onInput={(e) => onText(e.currentTarget.value)}
        />
      </div>
    </div>
  );
}
