/** One check in the list; made again only when something it shows has changed, so that an answer is painted at once. */
import { useMemo } from 'preact/hooks';
import type { Check } from '../../core/topics/fault-order/index.ts';
import { faultWords as say, minutes as inMinutes } from '../../words/fault.ts';
import { signalWord } from '../../words/kit.ts';
import { CheckBody } from './CheckBody.tsx';
import type { Answer } from './kept.ts';
import type { FaultSearchProps, ShownCaution } from './props.ts';

interface Props extends Pick<FaultSearchProps, 'checks' | 'cautions'> {
  readonly check: Check;
  readonly minutes: number;
  readonly given: Answer | undefined;
  /** Said on paper, where it is another than that of the check before. */
  readonly own: ShownCaution | undefined;
  readonly live: boolean;
  /** One and the same act for as long as the page lives. */
  readonly answer: (check: string, is: Answer | undefined) => void;
}

export function CheckLine(props: Props) {
  const { check, minutes, given, own, live } = props;
  // eslint-disable-next-line react-hooks/exhaustive-deps
  return useMemo(() => <MadeLine {...props} />, [check, minutes, given, own, live]);
}

function MadeLine({ check: { id, name }, minutes, given, own, live, checks, cautions, answer }: Props) {
  return (
    <li class={given ? 'fault-given' : undefined}>
      <details>
        <summary>
          <span class="fault-check">
            {name}
            <span class="fault-on-paper fault-how-on-paper">
              . {own && <b>{signalWord[own.level]}: </b>}
              {own?.first} {checks[id]?.conditions} {checks[id]?.how}
            </span>
          </span>
          <span class="fault-effort">{inMinutes(minutes)}</span>
          <span class="fault-seen no-print">{given ? say.gave[given] : say.seenAlready}</span>
          <span class="fault-ticks">
            <i class={given === 'fault' ? 'fault-ticked' : ''} /> {say.onPaper.fault}{' '}
            <i class={given === 'sound' ? 'fault-ticked' : ''} /> {say.onPaper.sound}
          </span>
        </summary>
        <CheckBody
          id={id}
          name={name}
          checks={checks}
          cautions={cautions}
          live={live}
          given={given}
          answer={(is) => answer(id, is)}
        />
        {given && (
          <button type="button" class="fault-plain no-print" onClick={() => answer(id, undefined)}>
            {say.takeBack}
          </button>
        )}
      </details>
    </li>
  );
}
