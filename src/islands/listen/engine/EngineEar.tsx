/** Under a speed box: the way to hear the engine. What listens is fetched when it is asked for, not before. */
import type { ComponentType } from 'preact';
import { useState } from 'preact/hooks';
import type { ListenedAt } from '../../../core/sound/index.ts';
import { engineEarWords as say } from '../../../words/hear-engine.ts';
import type { UnderBoxProps } from '../../kit/index.ts';
import type { HearEngineProps } from './HearEngine.tsx';

/** The ear for a box: what its speed is decides which speeds are looked for. */
export function engineEar(at: ListenedAt) {
  return function EngineEar(props: UnderBoxProps) {
    const [Hear, setHear] = useState<ComponentType<HearEngineProps>>();
    const [missing, setMissing] = useState(false);
    const fetchIt = () =>
      import('./HearEngine.tsx').then(
        (m) => setHear(() => m.HearEngine),
        () => setMissing(true),
      );
    return (
      <div class="listen" id={`${props.id}-listen`}>
        {Hear ? (
          <Hear {...props} at={at} />
        ) : (
          <button type="button" class="calc-button" onClick={() => void fetchIt()}>
            {say.open}
          </button>
        )}
        {missing && (
          <p class="listen-refused" role="status">
            {say.missing}
          </p>
        )}
      </div>
    );
  };
}
