/** The figures behind an answer as plain text: boxes print badly, and a bench card must stand alone. */
import { valueHeld } from '../../../core/contract/asked.ts';
import { filledIn, isPencil, type Entry, type EntryRow } from '../../../core/contract/entry.ts';
import type { Field, RowsField, SingleField } from '../../../core/contract/field.ts';
import { bringsUnit, unitBeside } from '../state/form.ts';
import { entryAt, rowsAt, systemOf, type Figures } from '../state/figures.ts';
import { isBlank, shownText } from '../state/shown-text.ts';
import { say } from '../../../words/index.ts';

interface Props {
  readonly asked: readonly Field[];
  readonly figures: Figures;
  readonly currency: string;
}

export function FiguresUsed({ asked, figures, currency }: Props) {
  return (
    <dl class="calc-used" aria-label={say.used}>
      {asked.map((f) => {
        const text = f.kind === 'rows' ? rowsText(f, figures, currency) : singleText(f, figures, f.key, currency);
        if (text === '') return null;
        const entries = filledIn(figures.entries[f.key]);
        return (
          <div key={f.key} class={entries.some(isPencil) ? 'calc-ink-pencil' : undefined}>
            <dt>{f.label}</dt>
            <dd>
              {text}
              <Whose entries={entries} />
            </dd>
          </div>
        );
      })}
    </dl>
  );
}

/** Beside a figure on paper: where it comes from, unless the reader wrote it. */
function Whose({ entries }: { readonly entries: readonly Entry[] }) {
  const pencil = entries.find(isPencil);
  const words = pencil ? say.whose[pencil.from === 'page' ? 'page' : 'example'] : whoseOf(entries[0]);
  return words ? <span class="calc-whose"> {words}</span> : null;
}

function whoseOf(entry: Entry | undefined): string {
  if (entry?.from === 'plate') return entry.of?.machine ? say.plateOf(entry.of.machine) : say.whose.plate;
  return entry?.from === 'carried' ? say.whose.carried : '';
}

function singleText(field: SingleField, figures: Figures, path: string, currency: string): string {
  const text = shownText(field, entryAt(figures.entries, path), figures.system);
  if (isBlank(text)) return '';
  if (field.kind === 'choice') return field.options.find((o) => o.value === text)?.label ?? text;
  if (field.kind === 'yes-no') return valueHeld(field, text) === true ? say.yes : say.no;
  const unit = bringsUnit(field, text) ? '' : unitBeside(field, systemOf(figures, path), currency);
  return unit ? `${text} ${unit}` : text;
}

function rowsText(field: RowsField, figures: Figures, currency: string): string {
  const filled = (row: EntryRow) =>
    field.columns.some((c) => c.kind !== 'choice' && c.kind !== 'yes-no' && !isBlank(row[c.key]?.text));
  return rowsAt(figures.entries, field)
    .map((row, i) =>
      // Rows nobody has filled in are no figures, whatever their columns start with.
      filled(row)
        ? field.columns
            .map((c) => singleText(c, figures, `${field.key}.${i + 1}.${c.key}`, currency))
            .filter(Boolean)
            .join(', ')
        : '',
    )
    .filter(Boolean)
    .join('; ');
}
