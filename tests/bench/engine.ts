/** Engine speed from sound: how many stretches a second, and how far off what is heard lies, kind by kind of spoiled note. */
import { engineNote, listenedRange } from '../../src/core/sound/index.ts';
import { exhaustNote } from '../core/sound/exhaust.ts';
import { borne, drowned, hard, judge, saws } from '../core/sound/trials.ts';

const engine = { strokes: 2, cylinders: 1 } as const;
const sound = exhaustNote({ engine, rpm: 2700 }, 48000, 0.4).subarray(0, 16384);

export const benches = [
  {
    name: 'engine: stretches of sound read at idle',
    run: () => {
      for (let i = 0; i < 50; i += 1) engineNote(sound, 48000, engine, listenedRange.idle[2]);
      return 50;
    },
  },
];

/** A line for each way a note is spoiled: over all engines and three seeds, how often right, and the greatest error of those. */
export function* figures(): Generator<string> {
  for (const { name, how } of [...borne, ...hard, ...drowned]) {
    const all = saws.flatMap((saw) => [1, 2, 3].map((seed) => ({ saw, ...judge(saw, how, 104729 * seed) })));
    const count = (is: string) => all.filter((o) => o.is === is).length;
    const most = Math.max(...all.filter((o) => o.is === 'right').map((o) => o.off), 0);
    const wrong = all.filter((o) => o.is === 'wrong').map((o) => o.saw.name);
    yield (
      `engine: ${name.padEnd(48)} of ${all.length}: right ${count('right')}, either ${count('either')}, ` +
      `refused ${count('refused')}, wrong ${count('wrong')}; greatest error ${(100 * most).toFixed(2)} %` +
      (wrong.length > 0 ? ` (${[...new Set(wrong)].join('; ')})` : '')
    );
  }
}
