/**
 * Exhaust notes made from their definition: a burst of gas at each firing, ringing on in the muffler, with all that spoils it.
 * Each sound is a list of firings on the crank's own clock, so that the speed asked for is known to the last digit.
 */
import type { Engine } from '../../../src/core/sound/index.ts';

export interface Exhaust {
  readonly engine: Engine;
  /** Speed at the beginning [rpm]. */
  readonly rpm: number;
  /** Change of speed in each second, as a share. */
  readonly drift?: number;
  /** Notes the muffler rings with [Hz]; the burst dies away in `decay` [s]. */
  readonly rings?: readonly number[];
  readonly decay?: number;
  /** Second cylinder's burst against the first; a V's second firing, as a share of the cycle. */
  readonly second?: number;
  readonly secondAt?: number;
  /** Every second burst of one cylinder against the first: a rich two-stroke without load. */
  readonly everySecond?: number;
  /** Share of firings that fail, at random; those leave a tenth. */
  readonly misfires?: number;
  /** Burst to burst, the loudness varies by this share, the moment by this share of the time between firings. */
  readonly uneven?: number;
  readonly jitter?: number;
  /** Hiss against the note, root mean square. */
  readonly noise?: number;
  /** Another steady tone [Hz] and its loudness against the note, root mean square. */
  readonly tone?: readonly [number, number];
  /** A sound comes back from a wall after so long [s], at this share. */
  readonly echo?: readonly [number, number];
  /** Notes below this the microphone hardly gives [Hz]. */
  readonly deafBelow?: number;
  /** Share of the peak at which the microphone clips. */
  readonly clip?: number;
  readonly seed?: number;
}

/** Park and Miller's generator, written out here. */
export function chance(seed: number): () => number {
  let state = seed % 2147483647 || 1;
  return () => (state = (state * 16807) % 2147483647) / 2147483647;
}

interface Firing {
  readonly at: number;
  readonly strength: number;
}

function firings(e: Exhaust, seconds: number, random: () => number): Firing[] {
  const turns = e.engine.strokes / 2;
  const drift = e.drift ?? 0;
  // Turns up to t: n (t + drift t^2 / 2); solved for t.
  const timeOf = (turn: number) => {
    const t = (turn * 60) / e.rpm;
    return drift === 0 ? t : (Math.sqrt(1 + 2 * drift * t) - 1) / drift;
  };
  const list: Firing[] = [];
  for (let cycle = 0; timeOf(cycle * turns) < seconds; cycle += 1) {
    const parts: [number, number][] = [[0, cycle % 2 === 1 ? (e.everySecond ?? 1) : 1]];
    if (e.engine.cylinders === 2) parts.push([e.secondAt ?? 0.5, e.second ?? 1]);
    for (const [share, loud] of parts) {
      const failed = random() < (e.misfires ?? 0) ? 0.1 : 1;
      const step = (60 / e.rpm) * (turns / e.engine.cylinders);
      list.push({
        at: timeOf((cycle + share) * turns) + (random() - 0.5) * 2 * (e.jitter ?? 0.005) * step,
        strength: loud * failed * (1 + (random() - 0.5) * 2 * (e.uneven ?? 0.1)),
      });
    }
  }
  return list;
}

export function exhaustNote(e: Exhaust, rate: number, seconds: number): Float32Array {
  const random = chance(e.seed ?? 1);
  const x = new Float64Array(Math.round(rate * seconds));
  const rings = e.rings ?? [170, 390, 820];
  const decay = e.decay ?? 0.003;
  for (const f of firings(e, seconds, random)) {
    const from = Math.ceil(f.at * rate);
    for (let i = Math.max(0, from); i < Math.min(x.length, from + 8 * decay * rate); i += 1) {
      const t = i / rate - f.at;
      const ring = rings.reduce((sum, hz, k) => sum + Math.cos(2 * Math.PI * hz * t + k) / (k + 1), 0);
      x[i] = (x[i] ?? 0) + f.strength * Math.exp(-t / decay) * (0.6 + ring);
    }
  }
  const heard = deaf(echoed(x, e.echo, rate), e.deafBelow ?? 60, rate);
  const loud = rms(heard);
  const [hz, level] = e.tone ?? [0, 0];
  const all = heard.map(
    (v, i) =>
      v +
      (e.noise ?? 0.03) * loud * Math.sqrt(3) * (2 * random() - 1) +
      level * loud * Math.SQRT2 * Math.sin((2 * Math.PI * hz * i) / rate),
  );
  const most = all.reduce((m, v) => Math.max(m, Math.abs(v)), 0);
  const clip = (e.clip ?? 1) * most;
  return Float32Array.from(all, (v) => (0.5 * Math.max(-clip, Math.min(clip, v))) / most);
}

function echoed(x: Float64Array, echo: Exhaust['echo'], rate: number): Float64Array {
  if (!echo) return x;
  const back = Math.round(echo[0] * rate);
  return x.map((v, i) => v + echo[1] * (x[i - back] ?? 0));
}

/** A microphone that falls off by twelve decibels an octave below a note. */
function deaf(x: Float64Array, below: number, rate: number): Float64Array {
  const keep = Math.exp((-2 * Math.PI * below) / rate);
  const once = (y: Float64Array) => {
    let [out, before] = [0, 0];
    return y.map((v) => {
      out = keep * (out + v - before);
      before = v;
      return out;
    });
  };
  return once(once(x));
}

function rms(x: Float64Array): number {
  return Math.sqrt(x.reduce((sum, v) => sum + v * v, 0) / x.length);
}
