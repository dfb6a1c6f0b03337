/** Listening as a state: off, asking, on, or refused with the reason. The microphone is shut when it stops or the page goes. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { findPitch } from '../../../core/topics/belt-tension/index.ts';
import { openMicrophone, type Microphone, type Refused } from './microphone.ts';
import { hear, nothingHeard, type Heard } from './plucks.ts';

export type State = 'off' | 'asking' | 'on' | Refused;

export interface Listening {
  readonly state: State;
  readonly heard: Heard;
  readonly start: () => Promise<void>;
  readonly stop: () => void;
}

/** Time between readings [ms]. */
const pause = 80;
/** Root mean square below which there is only the hiss of the microphone itself; full scale is 1. */
const quiet = 0.0005;

export function useListening(): Listening {
  const [state, setState] = useState<State>('off');
  const [heard, setHeard] = useState<Heard>(nothingHeard);
  const open = useRef<Microphone>();
  const timer = useRef<ReturnType<typeof setInterval>>();
  const gone = useRef(false);

  const shut = () => {
    clearInterval(timer.current);
    open.current?.close();
    open.current = undefined;
  };
  useEffect(
    () => () => {
      gone.current = true;
      shut();
    },
    [],
  );

  const start = async () => {
    shut();
    setState('asking');
    setHeard(nothingHeard);
    const found = await openMicrophone();
    if (typeof found === 'string') {
      setState(found);
      return;
    }
    if (gone.current) {
      found.close();
      return;
    }
    open.current = found;
    setState('on');
    timer.current = setInterval(() => {
      const samples = found.read();
      setHeard((before) => hear(before, loudness(samples) < quiet ? undefined : findPitch(samples, found.rate)));
    }, pause);
  };
  const stop = () => {
    shut();
    setState('off');
  };
  return { state, heard, start, stop };
}

function loudness(samples: Float32Array): number {
  let sum = 0;
  for (const v of samples) sum += v * v;
  return Math.sqrt(sum / samples.length);
}
