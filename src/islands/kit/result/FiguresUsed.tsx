/** The figures behind an answer as plain text: boxes print badly, and a bench card must stand alone. */
import type { Field, RawInputs, RawValue, RowsField, SingleField } from '../../../core/contract/field.ts';
import { bringsUnit, unitBeside } from '../state/form.ts';
import { rawOf, systemOf, type Figures } from '../state/figures.ts';
import { askedFields, isBlank, untouchedRows, untouchedText, valueHeld } from '../state/shown-text.ts';
import { say } from '../../../words/index.ts';

interface Props {
  readonly fields: readonly Field[];
  readonly figures: Figures;
  readonly currency: string;
}

export function FiguresUsed({ fields, figures, currency }: Props) {
  const raw = rawOf(figures);
  return (
    <dl class="calc-used" aria-label={say.used}>
      {askedFields(fields, raw).map((f) => {
        const text = f.kind === 'rows' ? rowsText(f, figures, currency) : singleText(f, figures, raw[f.key], currency);
        return text === '' ? null : (
          <div key={f.key}>
            <dt>{f.label}</dt>
            <dd>{text}</dd>
          </div>
        );
      })}
    </dl>
  );
}

function singleText(field: SingleField, figures: Figures, raw: RawValue, currency: string): string {
  const system = systemOf(figures, field.key);
  return cellText(
    field,
    field.key in figures.typed ? String(raw ?? '') : untouchedText(field, raw, system),
    system,
    currency,
  );
}

function cellText(field: SingleField, text: string, system: Figures['system'], currency: string): string {
  if (isBlank(text)) return '';
  if (field.kind === 'choice') return field.options.find((o) => o.value === text)?.label ?? text;
  if (field.kind === 'yes-no') return valueHeld(field, text) === true ? say.yes : say.no;
  const unit = bringsUnit(field, text) ? '' : unitBeside(field, system, currency);
  return unit ? `${text} ${unit}` : text;
}

function rowsText(field: RowsField, figures: Figures, currency: string): string {
  // Rows nobody has filled in are no figures, whatever their columns start with.
  if (field.optional && isBlank(rawOf(figures)[field.key])) return '';
  const system = systemOf(figures, field.key);
  const rows =
    field.key in figures.typed
      ? (figures.typed[field.key] as readonly RawInputs[])
      : untouchedRows(field, figures.base[field.key], system);
  return rows
    .map((row) =>
      field.columns
        .map((c) => cellText(c, String(row[c.key] ?? ''), system, currency))
        .filter(Boolean)
        .join(', '),
    )
    .join('; ');
}
