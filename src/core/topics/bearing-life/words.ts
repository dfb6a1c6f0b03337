import { formatFigures } from '../../quantity/index.ts';
import type { Say, Words } from '../../contract/words.ts';

/** Hours in two figures: the life of a bearing is known no better. */
function hours(si: number | string | undefined, say: Say): string {
  return say.quantity(Number(si), ['h', 'h'], 2);
}

const viscosity = ['mm2/s', 'mm2/s'] as const;

export const words: Words = {
  verdicts: {
    'seal-worth': (data, say) =>
      `Whole seals and clean water are worth about ${hours(data['gain'], say)}, ` +
      `${formatFigures(Number(data['times']), 2)} times the life it has now.`,
    'seal-worth-most': (data, say) =>
      `Whole seals and clean water are worth more than ${hours(data['gain'], say)}: from about ` +
      `${hours(data['here'], say)} to a life that outlasts the machine.`,
    'life-beyond': () =>
      'At this load the steel does not tire before something else ends the bearing. Keep it clean and greased.',
    'wear-not-counted': () =>
      'A life in hours counts tiring of the steel only. Slurry grinds the races away and washes the grease out, often long before. Take such a figure as the most to hope for, and cure the leak.',
    'seal-whole': () => 'It is kept as clean as whole seals keep it. Look after the seals.',
    'seal-no-gain': () =>
      'At this load and with this oil, cleaner running would not make the steel last longer. Seals still keep out what grinds it.',
    'load-fine': () => 'The load is within what the life sum is made for.',
    'load-high': (data) =>
      `The load is ${Math.round(100 * Number(data['share']))} % of the dynamic rating. Above half of it the sum promises too much.`,
    'load-dents': () =>
      'The load is above the static rating: the balls dent the races. Take a larger bearing or less load, on a belt less tension.',
  },
  problems: {
    'no-rating': (data) =>
      `The textbook table has no bearing of ${data['got']} mm bore. Give the bearing's own figures.`,
    'too-thin': (data, say) =>
      `The oil is too thin for the sum: ${say.quantity(Number(data['got']), viscosity)} where this ` +
      `bearing wants ${say.quantity(Number(data['wanted']), viscosity)}. ` +
      'Below a tenth the standard gives no life. Take a thicker grease.',
    'kappa-too-small': (data) =>
      `The viscosity ratio must be at least 0.1; ${data['got']} is below it, and the standard gives no factor there.`,
  },
};
