/** The figures behind an answer in words, each with whose it is: for paper and for the job sheet. */
import { valueHeld } from '../../../core/contract/asked.ts';
import { filledIn, isPencil, type Entry, type EntryRow } from '../../../core/contract/entry.ts';
import type { Field, RowsField, SingleField } from '../../../core/contract/field.ts';
import { say } from '../../../words/kit.ts';
import { entryAt, rowsAt, systemOf, type Figures } from './figures.ts';
import { bringsUnit, unitBeside } from './form.ts';
import { isBlank, shownText } from './shown-text.ts';

export interface UsedFigure {
  readonly key: string;
  readonly label: string;
  readonly text: string;
  /** A list row by row; `text` holds them run on. */
  readonly rows?: readonly string[];
  /** Where it comes from, unless the reader wrote it. */
  readonly whose: string;
  readonly pencil: boolean;
}

export function usedFigures(asked: readonly Field[], figures: Figures, currency: string): readonly UsedFigure[] {
  return asked.flatMap((f) => {
    const rows = f.kind === 'rows' ? rowTexts(f, figures, currency) : undefined;
    const text = f.kind === 'rows' ? (rows ?? []).join(' / ') : singleText(f, figures, f.key, currency);
    if (text === '') return [];
    const entries = filledIn(figures.entries[f.key]);
    const pencil = entries.find(isPencil);
    const whose = pencil ? say.whose[pencil.from === 'page' ? 'page' : 'example'] : whoseOf(entries[0]);
    return [{ key: f.key, label: f.label, text, ...(rows && { rows }), whose, pencil: pencil !== undefined }];
  });
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

/** Each row as "Breaker. Level at the ear, dB(A): 98; Time: 30 min": what begins it names it, the rest bears its column's name. */
function rowTexts(field: RowsField, figures: Figures, currency: string): readonly string[] {
  const filled = (row: EntryRow) =>
    field.columns.some((c) => c.kind !== 'choice' && c.kind !== 'yes-no' && !isBlank(row[c.key]?.text));
  const rowText = (n: number) => {
    const cells = field.columns.map((c, at) => {
      const text = singleText(c, figures, `${field.key}.${n}.${c.key}`, currency);
      return { names: at === 0 && c.kind === 'text', said: text && `${c.label}: ${text}`, text };
    });
    const name = cells.find((c) => c.names)?.text ?? '';
    const rest = cells.filter((c) => !c.names && c.text !== '').map((c) => c.said);
    return [name, rest.join('; ')].filter(Boolean).join('. ');
  };
  return (
    rowsAt(figures.entries, field)
      // Rows nobody has filled in are no figures, whatever their columns start with.
      .map((row, i) => (filled(row) ? rowText(i + 1) : ''))
      .filter(Boolean)
  );
}
