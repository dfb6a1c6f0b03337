/** Under the frequency box: hear the pluck with the device's own microphone. The box itself always takes a typed figure. */
import { formatNumber } from '../../../core/quantity/index.ts';
import type { UnderBoxProps } from '../../kit/index.ts';
import { Meter } from '../../listen/Meter.tsx';
import { useListening } from '../../listen/use-listening.ts';
import { listenWords as say } from '../../../words/listen.ts';
import { beltEar, clear, noteOf, type Heard } from './plucks.ts';

/** Plucks within this agree; their tensions then lie within six percent. */
const near = 0.03;
const hz = (n: number) => formatNumber(n, n < 100 ? 1 : 0);

export function Listen({ id, fill }: UnderBoxProps) {
  const { state, heard, start, stop } = useListening(beltEar);
  const note = noteOf(heard);
  const on = state === 'on';
  return (
    <div class="listen" id={`${id}-listen`} data-listening={state}>
      <div class="listen-row">
        <button
          type="button"
          class="calc-button"
          onClick={on ? stop : () => void start()}
          disabled={state === 'asking'}
        >
          {on ? say.stop : say.listen}
        </button>
        {note !== undefined && (
          <button type="button" class="calc-button calc-button-first" onClick={() => fill(hz(note))}>
            {say.use(hz(note))}
          </button>
        )}
      </div>
      {state === 'asking' && <p class="calc-help">{say.asking}</p>}
      {on && <Live heard={heard} />}
      {on && (
        <p class="calc-help">
          {say.how} {say.promise}
        </p>
      )}
      {state in say.refused && (
        <p class="listen-refused" role="status">
          {say.refused[state as keyof typeof say.refused]}
        </p>
      )}
      {heard.plucks.length > 0 && <Plucks plucks={heard.plucks} />}
    </div>
  );
}

/** The figure moves too fast to be read out; `role="status"` below says what was found. */
function Live({ heard: { now } }: { readonly heard: Heard }) {
  const clarity = now?.clarity ?? 0;
  const sure = clarity >= clear ? 'clear' : clarity >= 0.7 ? 'fair' : 'poor';
  return (
    <div class="listen-live" aria-hidden="true">
      <span class="calc-figure">
        {now && sure !== 'poor' ? hz(now.frequency) : '–'}
        <span class="calc-figure-unit">&nbsp;Hz</span>
      </span>
      <Meter clarity={clarity} from={clear} sure={sure}>
        {now ? say.sure[sure] : say.waiting}
      </Meter>
    </div>
  );
}

function Plucks({ plucks }: { readonly plucks: readonly number[] }) {
  const alike = Math.max(...plucks) / Math.min(...plucks) - 1 <= near;
  return (
    <p class="listen-plucks" role="status">
      {say.last}: {plucks.map((p) => `${hz(p)} Hz`).join(', ')}. {plucks.length > 1 && (alike ? say.agree : say.differ)}
    </p>
  );
}
