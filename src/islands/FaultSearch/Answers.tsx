/** The four answers to a check, none leaning forward. */
import { faultWords as say } from '../../words/fault.ts';
import { answers, type Answer } from './kept.ts';

interface Props {
  readonly name: string;
  readonly live: boolean;
  readonly given?: Answer | undefined;
  readonly answer: (is: Answer) => void;
}

export function Answers({ name, live, given, answer }: Props) {
  return (
    <div class="fault-answers no-print" role="group" aria-label={say.answersFor(name)}>
      {answers.map((is) => (
        <button
          key={is}
          type="button"
          class="fault-answer"
          disabled={!live}
          aria-pressed={given === undefined ? undefined : given === is}
          onClick={(e) => {
            // A line of the list closes with its answer, and its place in the order may change.
            const line = e.currentTarget.closest('details');
            if (line) line.open = false;
            answer(is);
          }}
        >
          {say.answer[is]}
        </button>
      ))}
    </div>
  );
}
