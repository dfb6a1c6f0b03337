/** Label, help and problem around a single box. */
import type { ComponentChildren } from 'preact';
import type { SingleField } from '../../../core/contract/field.ts';
import { Icon } from '../result/Icon.tsx';
import { say } from '../../../words/index.ts';

interface Props {
  readonly box: string;
  readonly field: SingleField;
  readonly unit: string;
  readonly problem: string | undefined;
  readonly said?: string | undefined;
  readonly children: ComponentChildren;
}

export function FieldFrame({ box, field, unit, problem, said, children }: Props) {
  return (
    <div class={problem ? 'calc-field calc-wrong' : 'calc-field'}>
      <div class="calc-asks">
        <label for={box}>
          {field.label}
          {unit && <span class="calc-hidden"> ({unit})</span>}
          {field.optional && <span class="calc-optional"> {say.optional}</span>}
        </label>
        {field.help && (
          <p class="calc-help" id={`${box}-help`}>
            {field.help}
          </p>
        )}
      </div>
      {children}
      {said && (
        <p class="calc-said" id={`${box}-said`}>
          {say.readAs} {said}
        </p>
      )}
      {problem && <ProblemLine box={box} problem={problem} />}
    </div>
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
  box: string,
  has: { readonly problem?: unknown; readonly help?: unknown; readonly said?: unknown },
): string | undefined {
  const ids = [has.problem && `${box}-problem`, has.help && `${box}-help`, has.said && `${box}-said`].filter(Boolean);
  return ids.length > 0 ? ids.join(' ') : undefined;
}
