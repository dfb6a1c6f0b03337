/** Listening as a state: off, asking, on, or refused with the reason. The microphone is shut when it stops or the page goes. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { openMicrophone, type Microphone, type Refused } from './microphone.ts';

export type State = 'off' | 'asking' | 'on' | Refused;

/** What is listened for: how one stretch of sound after another adds up. */
export interface Ear<Heard> {
  readonly nothing: Heard;
  /** Samples in a stretch. */
  readonly stretch: number;
  /** Time between readings [ms]. */
  readonly pause: number;
  /** `samples` is missing where there is only the hiss of the microphone itself. */
  readonly hear: (before: Heard, samples: Float32Array | undefined, rate: number) => Heard;
}

export interface Listening<Heard> {
  readonly state: State;
  readonly heard: Heard;
  readonly start: () => Promise<void>;
  readonly stop: () => void;
}

/** Root mean square below which there is only the hiss of the microphone itself; full scale is 1. */
const quiet = 0.0005;

export function useListening<Heard>(ear: Ear<Heard>): Listening<Heard> {
  const [state, setState] = useState<State>('off');
  const [heard, setHeard] = useState<Heard>(ear.nothing);
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
    setHeard(ear.nothing);
    const found = await openMicrophone(ear.stretch);
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
      setHeard((before) => ear.hear(before, loudness(samples) < quiet ? undefined : samples, found.rate));
    }, ear.pause);
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
