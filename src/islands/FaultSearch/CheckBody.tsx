/** One check as it is done: its caution, the state the machine must be in, how, and the answers. */
import { Answers } from './Answers.tsx';
import { Caution } from './Caution.tsx';
import type { Answer } from './kept.ts';
import type { FaultSearchProps } from './props.ts';

interface Props extends Pick<FaultSearchProps, 'checks' | 'cautions'> {
  readonly id: string;
  readonly name: string;
  readonly live: boolean;
  readonly given?: Answer | undefined;
  readonly answer: (is: Answer) => void;
}

export function CheckBody({ id, name, checks, cautions, live, given, answer }: Props) {
  const words = checks[id];
  return (
    <>
      {(words?.hazards ?? []).slice(0, 1).map((hazard) => {
        const caution = cautions[hazard];
        return caution && <Caution key={hazard} caution={caution} />;
      })}
      <p class="fault-how">
        {words?.conditions && <b>{words.conditions} </b>}
        {words?.how}
      </p>
      <Answers name={name} live={live} given={given} answer={answer} />
    </>
  );
}
