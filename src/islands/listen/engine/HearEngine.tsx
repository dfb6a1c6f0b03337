/** Hears a running engine and offers its speed, with plus or minus. Loaded when asked for. */
import { useState } from 'preact/hooks';
import { clearFrom, listenedRange, settled, type ListenedAt, type Settled } from '../../../core/sound/index.ts';
import { hearEngineWords as say } from '../../../words/hear-engine-open.ts';
import { listenWords } from '../../../words/listen.ts';
import type { UnderBoxProps } from '../../kit/index.ts';
import { Meter } from '../Meter.tsx';
import { useListening } from '../use-listening.ts';
import { engineChoices, engineEarFor, wholeTens, type EngineChoice, type Readings } from './readings.ts';

export type HearEngineProps = UnderBoxProps & { readonly at: ListenedAt };

/** Kept while the page is open: the next box is of the same saw. */
let lastChoice: EngineChoice = '2-1';

export function HearEngine(props: HearEngineProps) {
  const [choice, setChoice] = useState(lastChoice);
  const choose = (value: string) => {
    lastChoice = engineChoices.find((c) => c === value) ?? lastChoice;
    setChoice(lastChoice);
  };
  return (
    <>
      <p class="listen-care">
        <strong>{say.care.first}</strong> {say.care.rest} {say.how[props.at]}
      </p>
      <label class="calc-label" for={`${props.id}-engine`}>
        {say.engine}
      </label>
      <div class="calc-box calc-box-list">
        <select id={`${props.id}-engine`} onChange={(e) => choose(e.currentTarget.value)}>
          {engineChoices.map((c) => (
            <option key={c} value={c} selected={c === choice}>
              {say.engines[c]}
            </option>
          ))}
        </select>
      </div>
      <Ear key={choice} {...props} choice={choice} />
    </>
  );
}

/** What was heard of one kind of engine says nothing of another: it begins anew with each. */
function Ear({ id, fill, at, choice }: HearEngineProps & { readonly choice: EngineChoice }) {
  const { state, heard, start, stop } = useListening(engineEarFor(choice, at));
  const on = state === 'on';
  const said = settled(heard);
  const offers = said.kind === 'speed' ? [said.rotation] : said.kind === 'either' ? [said.rotation, said.other] : [];
  return (
    <div id={`${id}-ear`} data-listening={state}>
      <div class="listen-row">
        <button
          type="button"
          class="calc-button"
          onClick={on ? stop : () => void start()}
          disabled={state === 'asking'}
        >
          {on ? listenWords.stop : say.start}
        </button>
        {offers.map((rotation) => (
          <button
            key={wholeTens(rotation)}
            type="button"
            class="calc-button calc-button-first"
            onClick={() => fill(wholeTens(rotation))}
          >
            {say.use(wholeTens(rotation))}
          </button>
        ))}
      </div>
      {state === 'asking' && <p class="calc-help">{listenWords.asking}</p>}
      {on && <Live heard={heard} />}
      {(on || heard.length > 0) && (
        <p class="listen-plucks" role="status">
          {sentence(said, choice, at)}
        </p>
      )}
      {state in listenWords.refused && (
        <p class="listen-refused" role="status">
          {say.refused[state as keyof typeof say.refused]}
        </p>
      )}
      <p class="calc-help">{listenWords.promise}</p>
    </div>
  );
}

/** The figure moves too fast to be read out; the sentence under it says what was found. */
function Live({ heard }: { readonly heard: Readings }) {
  const now = heard.at(-1);
  const clarity = now?.kind === 'speed' ? now.clarity : 0;
  const sure = clarity >= clearFrom ? 'clear' : clarity >= 0.5 ? 'fair' : 'poor';
  return (
    <div class="listen-live" aria-hidden="true">
      <span class="calc-figure">
        {now?.kind === 'speed' && sure === 'clear' ? wholeTens(now.rotation) : '–'}
        <span class="calc-figure-unit">&nbsp;rpm</span>
      </span>
      <Meter clarity={clarity} from={clearFrom} sure={sure}>
        {say.sure[sure]}
      </Meter>
    </div>
  );
}

function sentence(said: Settled, choice: EngineChoice, at: HearEngineProps['at']): string {
  switch (said.kind) {
    case 'listening':
      return say.listening;
    case 'speed':
      return say.speed[said.sure](wholeTens(said.rotation), String(Math.ceil(said.within * 6) * 10));
    case 'either':
      return say.either(wholeTens(said.rotation), wholeTens(said.other));
    case 'cannot-tell': {
      const { lowest, highest } = listenedRange[at][choice.startsWith('2') ? 2 : 4];
      return say.cannotTell[said.why](wholeTens(lowest), wholeTens(highest));
    }
  }
}
