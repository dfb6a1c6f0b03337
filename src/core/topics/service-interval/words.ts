import { sayDay } from '../../calendar/index.ts';
import type { Say, Words } from '../../contract/words.ts';

const days = (n: number | string | undefined) =>
  Number(n) === 0 ? 'today' : Number(n) === 1 ? 'in 1 day' : `in ${n} days`;

/** Said where the hours were worked out from a day and the use. */
const estimated = (from: number | string | undefined) =>
  from === 'estimated' ? ' The hours run since it was last done are estimated from its use: read the meter.' : '';

type Data = Readonly<Record<string, number | string>>;

/** "At 1,000 h: overdue: ...; due now: ...; coming: ..." with what there is of each. */
function byMeter(d: Data, say: Say): string {
  const at = d['reading'] === undefined ? 'By the hour meters' : `At ${say.quantity(Number(d['reading']), ['h', 'h'])}`;
  const parts = (
    [
      ['overdue', 'overdue'],
      ['due', 'due now'],
      ['coming', 'coming'],
    ] as const
  ).flatMap(([key, name]) => (d[key] === '' ? [] : [`${name}: ${d[key]}`]));
  const said = parts.map((p) => `${p.charAt(0).toUpperCase()}${p.slice(1)}.`).join(' ');
  const nothing = `nothing is due. Next is ${d['next']}, at ${say.quantity(Number(d['nextAt']), ['h', 'h'])}.`;
  const counted =
    d['counted'] === 'yes'
      ? ' Where nobody knows when it was last done, it is counted from 0 h: look at the job sheets.'
      : '';
  return `${at}: ${said === '' ? nothing : said}${counted}`;
}

export const words: Words = {
  figures: { reading: ['h', 'h'], nextAt: ['h', 'h'] },
  verdicts: {
    'meter-overdue': byMeter,
    'meter-due': byMeter,
    'meter-coming': byMeter,
    'meter-later': byMeter,
    overdue: (d) =>
      `${d['machine']}: ${d['task']}. Overdue by ${d['days']} ` +
      `${Number(d['days']) === 1 ? 'day' : 'days'}, since ${sayDay(String(d['date']))}.${estimated(d['since'])}`,
    'due-by-hours': (d) =>
      `${d['machine']}: ${d['task']}. Due on ${sayDay(String(d['date']))}, ${days(d['days'])}, by its hours.${estimated(d['since'])}`,
    'due-by-calendar': (d) =>
      `${d['machine']}: ${d['task']}. Due on ${sayDay(String(d['date']))}, ${days(d['days'])}, by the calendar.${estimated(d['since'])}`,
    'clock-pays': (d) =>
      `Replacing the part by the clock pays: at the age of least cost it saves ${d['saves']} % against running it until it fails.`,
    'clock-hardly-pays': (d) =>
      `Replacing the part by the clock hardly pays: it saves ${d['saves']} % against running the part ` +
      'until it fails. Inspect it at every service and replace it on what you see.',
    'clock-too-few': (d) =>
      `Too few to tell: ${d['failures']} failed parts say next to nothing about wear. ` +
      `Go by inspection until at least ${d['least']} have been recorded.`,
    'clock-not-shown': (d) =>
      `Too little to tell: these records fit wear and pure chance alike (shape ${d['low']} to ` +
      `${d['high']}). Do not replace the part by the clock on them; inspect it, and go on recording.`,
    'clock-does-not-wear': () =>
      'Do not replace the part by the clock. With a shape of 1 or less an old part fails no sooner than a new one. Inspect it, and look for poor fitting if new ones fail early.',
    'clock-failure-is-cheap': () =>
      'Do not replace the part by the clock. A failure costs no more than changing the part in time: run it until it fails.',
  },
  problems: {
    'no-such-day': (d) => `"${d['got']}" is no day of the calendar. Write it YYYY-MM-DD, like 2026-03-14.`,
    'done-after-start': (d) =>
      `Last done on ${sayDay(String(d['got']))} is after the start of the list, ${sayDay(String(d['start']))}.`,
    'no-interval': (d) => `"${d['task']}" has neither hours nor a calendar limit. Give at least one.`,
    'meter-backwards': () => 'The hour meter reads less now than when the service was last done. Check both readings.',
    'range-empty': () => 'The longest life seen must be longer than the shortest.',
    'beyond-calendar': (d) => `That day lies outside the years 1 to 9999; ${d['got']} days is too far.`,
    'too-hot-to-grease': () =>
      'Above 100 °C this rule ends, and an ordinary grease with it. Find out why the bearing runs so hot.',
    'no-fit': () =>
      'These records fit no law of wear. At least two of the parts must have failed, at hours that are clearly apart.',
    'too-fast-to-grease': () => 'The bearing turns too fast for its size for this formula.',
  },
};
