/** A check failed: do not cut; call, put it right and look again, or end here. */
import type { CheckWords } from '../../words/check.ts';
import type { CutCheckProps } from './props.ts';

interface Props {
  readonly name: string;
  readonly say: string;
  readonly shop: CutCheckProps['shop'];
  readonly words: CheckWords;
  readonly again: () => void;
  readonly end: () => void;
}

export function Stop({ name, say, shop, words, again, end }: Props) {
  return (
    <div class="cut-stop" role="alert">
      <h2 tabIndex={-1}>{words.stopTitle}</h2>
      <p class="cut-say">
        {name}. {say}
      </p>
      <p>{words.stopSays}</p>
      <div class="cut-acts">
        <a class="cut-button cut-call" href={shop.tel}>
          {shop.call} {shop.phone}
        </a>
        <button type="button" class="cut-button" onClick={again}>
          {words.mended}
        </button>
        <button type="button" class="cut-button" onClick={end}>
          {words.endHere}
        </button>
      </div>
    </div>
  );
}
