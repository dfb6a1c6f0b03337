import type { Field } from '../../../core/contract/field.ts';
import type { UnitPair, UnitSystem } from '../../../core/quantity/index.ts';
import type { Value } from '../../../core/contract/result.ts';
import { say } from '../../../words/kit.ts';

/** Whether anything asked or answered is written differently in inches: money and hours are not. */
export function hasTwoSystems(fields: readonly Field[], values: readonly Value[]): boolean {
  const asked = fields
    .flatMap((f) => (f.kind === 'rows' ? f.columns : [f]))
    .flatMap((f) => (f.kind === 'quantity' ? [f.units] : []));
  const answered = values.flatMap((v): readonly (UnitPair | undefined)[] =>
    v.kind === 'quantity' ? [v.units] : v.kind === 'table' ? v.columns.map((c) => c.units) : [],
  );
  return [...asked, ...answered].some((pair) => pair !== undefined && pair[0] !== pair[1]);
}

interface Props {
  readonly id: string;
  readonly system: UnitSystem;
  readonly onSwitch: (system: UnitSystem) => void;
}

export function UnitSwitch({ id, system, onSwitch }: Props) {
  return (
    // No fieldset: where a legend stands beside its boxes is told differently in every engine.
    <div class="calc-units" role="group" aria-labelledby={`${id}-units-name`}>
      <span class="calc-units-name" id={`${id}-units-name`}>
        {say.units}
      </span>
      {(['metric', 'inch'] as const).map((one) => (
        <span class="calc-unit-choice" key={one}>
          <input
            type="radio"
            name={`${id}-units`}
            id={`${id}-units-${one}`}
            value={one}
            checked={system === one}
            onChange={() => onSwitch(one)}
          />
          <label for={`${id}-units-${one}`}>{say[one]}</label>
        </span>
      ))}
    </div>
  );
}
