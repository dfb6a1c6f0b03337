/**
 * The one rule for the level of a caution. Two questions about the worst that can well happen when its order is not
 * followed: what it does, and whether it is to be expected. The signal words are those of ANSI Z535; the two questions
 * are the almanac's own way to choose among them.
 *
 * | what it does | to be expected | possible |
 * |---|---|---|
 * | kills | danger | warning |
 * | leaves lasting harm: an eye, a finger, hearing, lungs | warning | warning |
 * | hurts, and heals | caution | caution |
 * | damages the machine, the work or water | notice | notice |
 */
export const levels = ['danger', 'warning', 'caution', 'notice'] as const;
export const harms = ['kills', 'lasts', 'heals', 'damages'] as const;
export const likelihoods = ['expected', 'possible'] as const;

export type Level = (typeof levels)[number];
export type Harm = (typeof harms)[number];
export type Likelihood = (typeof likelihoods)[number];

/**
 * The level of a caution.
 * @param harm the worst that can well happen @param likelihood whether it is to be expected when the order is not followed
 * Example: a finger lost to a belt, expected -> warning.
 */
export function levelOf(harm: Harm, likelihood: Likelihood): Level {
  switch (harm) {
    case 'kills':
      return likelihood === 'expected' ? 'danger' : 'warning';
    case 'lasts':
      return 'warning';
    case 'heals':
      return 'caution';
    case 'damages':
      return 'notice';
  }
}
