/** All boxes of a topic: ungrouped ones first, then each group; seldom-needed ones folded away where they belong. */
import { useEffect, useRef } from 'preact/hooks';
import type { Field } from '../../../core/contract/field.ts';
import { askedFields } from '../../../core/contract/asked.ts';
import { say } from '../../../words/index.ts';
import { ChoiceBox } from './ChoiceBox.tsx';
import { RowsBox } from './RowsBox.tsx';
import { TextBox } from './TextBox.tsx';
import { boxId, type Form } from '../state/form.ts';

interface Props {
  readonly form: Form;
  readonly fields: readonly Field[];
  readonly compact: boolean;
}

export function FieldList({ form, fields, compact }: Props) {
  const asked = askedFields(fields, form.raw).filter((f) => !compact || !f.more);
  const groups = [...new Set(asked.flatMap((f) => f.group ?? []))];
  return (
    <>
      <Group form={form} fields={asked.filter((f) => !f.group)} />
      {groups.map((group) => (
        <Group key={group} form={form} name={group} fields={asked.filter((f) => f.group === group)} />
      ))}
    </>
  );
}

interface GroupProps {
  readonly form: Form;
  readonly fields: readonly Field[];
  readonly name?: string;
}

function Group({ form, fields, name }: GroupProps) {
  const usual = fields.filter((f) => !f.more);
  const seldom = fields.filter((f) => f.more);
  if (name === undefined || usual.length === 0) {
    return (
      <>
        <Boxes form={form} fields={usual} />
        <Seldom form={form} fields={seldom} {...(name === undefined ? {} : { name })} />
      </>
    );
  }
  return (
    <fieldset class="calc-group">
      <legend>{name}</legend>
      <Boxes form={form} fields={usual} />
      <Seldom form={form} fields={seldom} />
    </fieldset>
  );
}

function Boxes({ form, fields }: GroupProps) {
  if (fields.length === 0) return null;
  return (
    <div class="calc-fields">
      {fields.map((f) => (
        <OneField key={f.key} form={form} field={f} />
      ))}
    </div>
  );
}

function Seldom({ form, fields, name }: GroupProps) {
  const details = useRef<HTMLDetailsElement>(null);
  const wrong = fields.some((f) => Object.keys(form.problemAt).some((path) => path.split('.')[0] === f.key));
  // A problem must never hide in a closed drawer.
  useEffect(() => {
    if (wrong && details.current) details.current.open = true;
  }, [wrong]);
  if (fields.length === 0) return null;
  return (
    <details class="calc-more" ref={details}>
      <summary>
        {say.more}
        {name && `: ${name}`}
      </summary>
      <Boxes form={form} fields={fields} />
    </details>
  );
}

function OneField({ form, field }: { readonly form: Form; readonly field: Field }) {
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
