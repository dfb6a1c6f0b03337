/** All boxes of a topic: first those that must be filled in, in pairs; what stands as it is or is seldom needed is folded. */
import type { VNode } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { askedFields } from '../../../core/contract/asked.ts';
import type { Field } from '../../../core/contract/field.ts';
import { say } from '../../../words/kit.ts';
import { rowsAt } from '../state/figures.ts';
import { boxId, shownAt, type Form } from '../state/form.ts';
import { ChoiceBox } from './ChoiceBox.tsx';
import { RowsBox } from './RowsBox.tsx';
import { TextBox } from './TextBox.tsx';

interface Props {
  readonly form: Form;
  readonly fields: readonly Field[];
  readonly compact: boolean;
}

export function FieldList({ form, fields, compact }: Props) {
  const asked = askedFields(fields, form.raw);
  const folded = compact ? [] : asked.filter((f) => folds(f, fields));
  const shown = asked.filter((f) => (compact ? !f.more : !folded.includes(f)));
  const groups = [...new Set(folded.map((f) => f.group))];
  return (
    <>
      <Boxes form={form} fields={shown} />
      {groups.length > 0 && (
        <div class="calc-mores">
          {groups.map((group) => (
            <Seldom key={group ?? ''} form={form} name={group} fields={folded.filter((f) => f.group === group)} />
          ))}
        </div>
      )}
    </>
  );
}

/** A group of boxes folds when none of them must be typed in: each is optional, or stands as it is. */
function folds(field: Field, fields: readonly Field[]): boolean {
  if (field.more) return true;
  if (!field.group) return false;
  const must = (f: Field) => !f.more && !f.optional && !f.usual && f.kind !== 'choice' && f.kind !== 'yes-no';
  // A box that a choice of its own group opens does not hold the group open.
  const opened = (f: Field) => f.when && fields.some((c) => c.key === f.when?.field && c.group === f.group);
  return !fields.some((f) => f.group === field.group && must(f) && !opened(f));
}

interface GroupProps {
  readonly form: Form;
  readonly fields: readonly Field[];
}

/**
 * A box is made again only when something it shows has changed; the others are the nodes they were, which Preact passes
 * over. Their acts do not hang on when they were made: they name the box and hand on what is in it.
 */
function Boxes({ form, fields }: GroupProps) {
  const made = useRef(new Map<string, { readonly shown: string; readonly node: VNode }>()).current;
  if (fields.length === 0) return null;
  const box = (field: Field): VNode => {
    const shown = shownIn(form, field);
    const before = made.get(field.key);
    if (before?.shown === shown) return before.node;
    const node = <MadeField key={field.key} form={form} field={field} />;
    made.set(field.key, { shown, node });
    return node;
  };
  return <div class="calc-fields">{fields.map(box)}</div>;
}

function Seldom({ form, fields, name }: GroupProps & { readonly name: string | undefined }) {
  const details = useRef<HTMLDetailsElement>(null);
  const wrong = fields.some((f) => Object.keys(form.problemAt).some((path) => path.split('.')[0] === f.key));
  // A problem must never hide in a closed drawer.
  useEffect(() => {
    if (wrong && details.current) details.current.open = true;
  }, [wrong]);
  return (
    <details class="calc-more" ref={details}>
      <summary>
        {name ?? say.more} ({fields.length})
      </summary>
      <Boxes form={form} fields={fields} />
    </details>
  );
}

/** All that the boxes of a field show, as one text to compare. */
function shownIn(form: Form, field: Field): string {
  if (field.kind !== 'rows') return shownAt(form, field.key);
  const rows = rowsAt(form.figures.entries, field);
  const cells = rows.map((_, i) => field.columns.map((c) => shownAt(form, `${field.key}.${i + 1}.${c.key}`)));
  return JSON.stringify([form.figures.system, form.problemAt[field.key], cells]);
}

function MadeField({ form, field }: { readonly form: Form; readonly field: Field }) {
  switch (field.kind) {
    case 'rows':
      return <RowsBox form={form} field={field} />;
    case 'choice':
    case 'yes-no':
      return <ChoiceBox form={form} field={field} />;
    default: {
      const Under = form.underBox?.[field.key];
      return (
        <>
          <TextBox form={form} field={field} />
          {Under && <Under id={boxId(form.id, field.key)} fill={(text) => form.type(field.key, text)} />}
        </>
      );
    }
  }
}
