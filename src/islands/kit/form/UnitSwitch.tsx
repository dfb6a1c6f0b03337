import type { UnitSystem } from '../../../core/quantity/index.ts';
import { say } from '../words.ts';

interface Props {
  readonly id: string;
  readonly system: UnitSystem;
  readonly onSwitch: (system: UnitSystem) => void;
}

export function UnitSwitch({ id, system, onSwitch }: Props) {
  return (
    <fieldset class="calc-units">
      <legend>{say.units}</legend>
      {(['metric', 'inch'] as const).map((one) => (
        <span class="calc-unit-choice" key={one}>
          <input type="radio" name={`${id}-units`} id={`${id}-units-${one}`} value={one} checked={system === one} onChange={() => onSwitch(one)} />
          <label for={`${id}-units-${one}`}>{say[one]}</label>
        </span>
      ))}
    </fieldset>
  );
}
