/** Label, help and problem around a single box. */
import type { ComponentChildren } from 'preact';
import type { SingleField } from '../../../core/contract/field.ts';
import { Icon } from '../result/Icon.tsx';
import { say } from '../../../words/kit.ts';
import { entryAt } from '../state/figures.ts';
import { boxId, inkClass, saidAt, type Form } from '../state/form.ts';

interface Props {
  readonly form: Form;
  readonly field: SingleField;
  readonly help?: string | undefined;
  readonly unit: string;
  readonly children: ComponentChildren;
}

export function FieldFrame({ form, field, help = field.help, unit, children }: Props) {
  const box = boxId(form.id, field.key);
  const problem = form.problemAt[field.key];
  return (
    <div
      class={`calc-field${isWide(field) ? ' calc-field-wide' : ''}${inkClass(form, field.key)}${problem ? ' calc-wrong' : ''}`}
    >
      <div class="calc-asks">
        <label for={box}>
          {field.label}
          {unit && <span class="calc-hidden"> ({unit})</span>}
          {field.optional && <span class="calc-optional"> {say.optional}</span>}
        </label>
        {help && (
          <p class="calc-help" id={`${box}-help`}>
            {help}
          </p>
        )}
      </div>
      {children}
      <UnderLine form={form} field={field} path={field.key} />
    </div>
  );
}

interface UnderProps {
  readonly form: Form;
  readonly field: SingleField;
  readonly path: string;
}

/** What is said under a box: how its text was read, what is wrong with it, and the ways it can be read. */
export function UnderLine({ form, field, path }: UnderProps) {
  const box = boxId(form.id, path);
  const said = saidAt(form, field, path);
  const problem = form.problemAt[path];
  const plateSays = path === field.key ? form.plateSaysAt[path] : undefined;
  const whose = whoseAt(form, path);
  const readings = problem === undefined ? undefined : form.readingsAt[path];
  return (
    <>
      {said && (
        <p class="calc-said" id={`${box}-said`}>
          {say.readAs} {said}
        </p>
      )}
      {plateSays !== undefined && (
        <p class="calc-said calc-plate-says" id={`${box}-plate`}>
          {say.plateSays(plateSays)}
        </p>
      )}
      {whose && (
        <span class="calc-hidden" id={`${box}-whose`}>
          {whose}
        </span>
      )}
      {problem && <ProblemLine box={box} problem={problem} />}
      {readings && (
        <p class="calc-readings">
          {readings.map((text) => (
            <button type="button" class="calc-button" key={text} onClick={() => form.type(path, text)}>
              {text}
            </button>
          ))}
        </p>
      )}
    </>
  );
}

export function ProblemLine({ box, problem }: { readonly box: string; readonly problem: string }) {
  return (
    <p class="calc-problem" id={`${box}-problem`}>
      <Icon name="caution" /> {problem}
    </p>
  );
}

/** Ids a box is described by, in the order they are worth hearing. */
export function describedBy(
  form: Form,
  path: string,
  field: SingleField | undefined,
  help?: string,
): string | undefined {
  const box = boxId(form.id, path);
  const said = field && saidAt(form, field, path);
  const ids = [
    form.problemAt[path] && `${box}-problem`,
    help && `${box}-help`,
    said && `${box}-said`,
    form.plateSaysAt[path] !== undefined && `${box}-plate`,
    whoseAt(form, path) && `${box}-whose`,
  ].filter(Boolean);
  return ids.length > 0 ? ids.join(' ') : undefined;
}

/** Said to who cannot see the line beside a box: which machine's figure stands in it. */
function whoseAt(form: Form, path: string): string | undefined {
  const entry = entryAt(form.figures.entries, path);
  if (entry?.from !== 'plate' || entry.text.trim() === '') return undefined;
  return entry.of?.machine ? say.plateOf(entry.of.machine) : say.whose.plate;
}

/** Letters of an option that still fit a box of half the form's width. */
const fitsHalf = 22;

function isWide(field: SingleField): boolean {
  return field.kind === 'choice' && field.options.some((o) => o.label.length > fitsHalf);
}
