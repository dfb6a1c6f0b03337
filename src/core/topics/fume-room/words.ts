import type { Say, Words } from '../../contract/words.ts';

/** A wait is never told too short: rounded up. */
const wait = (seconds: number | string | undefined, say: Say) =>
  say.quantity(Math.max(1, Math.ceil(Number(seconds) / 60 - 1e-9)) * 60, ['min', 'min']);

export const words: Words = {
  figures: { wait: ['min', 'min'] },
  verdicts: {
    engine: () =>
      'Do not run an engine in there, not for a minute. Open doors and fans do not make it safe: people were poisoned with both. Take the work outside, or use a tool without an engine.',
    'leak-stop': () =>
      'Do not stay in there. The reckoning passes a limit: shut off what gives it off, get everybody out, ventilate, and measure from outside before anybody goes in.',
    'leak-measure': () =>
      'Ventilate and measure. The reckoning stays under the limits, and a reckoning is no measurement: find where it comes in, stop it, and wear an alarm that sounds.',
    'stopped-wait': (d, say) =>
      `Do not go in. Ventilate and measure: at best it takes ${wait(d['wait'], say)} to thin to 20 ppm, ` +
      'and corners and pits take longer. Waiting is no permit; the meter is.',
    'stopped-shut': () =>
      'Do not go in. Without fresh air it does not thin out at all. Open doors and windows from outside, and measure.',
    'stopped-measure': () =>
      'Ventilate and measure again, in corners and pits too, with an alarm on you. A reading at the door says nothing about the far end.',
    'check-local': () =>
      'Check today’s rule of your place. Levels are of OSHA 29 CFR 1910.1000 Table Z-1 as seen in November 2026 (50 ppm), NIOSH, 1972 (35; 200 at no time) and Directive 2004/37/EC by (EU) 2022/431 of 16 March 2022 (20; 100 over 15 min). None of them allows an engine indoors.',
  },
  problems: {},
};
