/** A caution in line form: its level and the one order that matters; it opens to all. Paper has all. */
import { signalWord } from '../../words/kit.ts';
import type { ShownCaution } from './props.ts';

interface Props {
  readonly caution: ShownCaution;
  /** Checks it belongs to, where it stands away from them. */
  readonly at?: string | undefined;
}

export function Caution({ caution, at }: Props) {
  return (
    <details class={`fault-caution fault-caution-${caution.level}`}>
      <summary>
        <em>{signalWord[caution.level]}</em> {caution.first}
      </summary>
      <p>
        <b>{caution.title}.</b> {caution.say}
      </p>
      <ul>
        {caution.do.map((order) => (
          <li key={order}>{order}</li>
        ))}
      </ul>
      {at && <p class="fault-quiet">{at}</p>}
    </details>
  );
}
