/** What the rest of the answer, or a verdict of it, still waits for: boxes that are empty or not the reader's, each a way there. */
import { filledIn, isPencil } from '../../../core/contract/entry.ts';
import type { Field } from '../../../core/contract/field.ts';
import { hasOwn } from '../state/figures.ts';
import { boxId } from '../state/form.ts';
import { mayBeConfirmed } from '../state/starts.ts';
import type { Worked } from '../state/use-calculation.ts';
import { goToBox } from '../state/go-to-box.ts';
import { say } from '../../../words/kit.ts';
import { Icon } from './Icon.tsx';

interface Props {
  readonly id: string;
  readonly worked: Worked;
  /** The short form has no drawers: what stands in one is only named. */
  readonly compact: boolean;
  readonly onConfirm?: ((keys: readonly string[]) => void) | undefined;
}

export function Still({ id, worked, compact, onConfirm }: Props) {
  const waiting = worked.asked.filter(
    (f) => worked.missing.includes(f.key) || worked.judged.stillToEnter.includes(f.key),
  );
  // An example says so in its mark; it waits for nothing.
  if (waiting.length === 0 || !hasOwn(worked.figures.entries)) return null;
  const toConfirm = waiting.filter((f) => confirmable(f, worked));
  const toEnter = waiting.filter((f) => !toConfirm.includes(f));
  return (
    <div class="calc-still">
      {toEnter.length > 0 && (
        <p>
          <Icon name="note" /> {say.stillToEnter} <Names id={id} fields={toEnter} compact={compact} />
        </p>
      )}
      {toConfirm.length > 0 && (
        <p>
          {toEnter.length === 0 && <Icon name="note" />} {say.stillToConfirm}{' '}
          <Names id={id} fields={toConfirm} compact={compact} />{' '}
          {onConfirm && (
            <button type="button" class="calc-button" onClick={() => onConfirm(toConfirm.map((f) => f.key))}>
              {say.confirm}
            </button>
          )}
        </p>
      )}
    </div>
  );
}

/** A default nobody touched may be taken over as it stands; a figure of the example is typed anew. */
function confirmable(field: Field, { figures }: Worked): boolean {
  if (field.kind === 'rows' || !mayBeConfirmed(field)) return false;
  const entry = filledIn(figures.entries[field.key]).find(isPencil);
  return (
    entry?.from === 'example' &&
    entry.text === String(field.default === true ? 'yes' : field.default === false ? 'no' : field.default)
  );
}

interface NamesProps {
  readonly id: string;
  readonly fields: readonly Field[];
  readonly compact: boolean;
}

function Names({ id, fields, compact }: NamesProps) {
  return (
    <>
      {fields.map((f, i) => (
        <span key={f.key}>
          {i > 0 && ', '}
          {compact && f.more ? f.label : <ToBox id={boxId(id, f.key)} label={f.label} />}
        </span>
      ))}
      .
    </>
  );
}

function ToBox({ id, label }: { readonly id: string; readonly label: string }) {
  return (
    <a
      href={`#${id}`}
      onClick={(e) => {
        e.preventDefault();
        goToBox(id);
      }}
    >
      {label}
    </a>
  );
}
