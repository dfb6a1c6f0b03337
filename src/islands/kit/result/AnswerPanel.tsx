/** The answer as the hand needs it: the one caution that guards the act, the finding, what is still to enter, the other cautions. */
import type { IslandProps } from '../state/props.ts';
import { sayingOf } from '../state/saying.ts';
import type { Worked } from '../state/use-calculation.ts';
import type { Reader } from '../state/reading.ts';
import { Cautions, inOrder } from './Cautions.tsx';
import { mainOf } from '../state/main-values.ts';
import { MainValues } from './MainValues.tsx';
import { Still } from './Still.tsx';

interface Props {
  readonly page: IslandProps;
  readonly worked: Worked;
  readonly reader: Reader;
  /** Scripts run: cautions fold. */
  readonly live: boolean;
  readonly onConfirm?: ((keys: readonly string[]) => void) | undefined;
}

export function AnswerPanel({ page, worked, reader, live, onConfirm }: Props) {
  const [gravest, ...others] = inOrder(worked.answer.cautions);
  return (
    <>
      {gravest && <Cautions cautions={[gravest]} hazards={page.hazards} folded={live} />}
      <MainValues
        values={mainOf(worked.answer.values)}
        saying={sayingOf(worked)}
        reader={reader}
        sources={page.sources}
      />
      <Still id={page.id} worked={worked} compact={page.compact === true} onConfirm={onConfirm} />
      {others.length > 0 && (
        <div class="calc-cautions">
          <Cautions cautions={others} hazards={page.hazards} folded={live} />
        </div>
      )}
    </>
  );
}
