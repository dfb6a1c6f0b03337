import type { Words } from '../../contract/words.ts';

const micro = ['µm', 'thou'] as const;
const mm = ['mm', 'in'] as const;

function named(group: number | string | undefined): string {
  return group === 'CN' ? 'normal clearance' : `clearance ${group}`;
}

export const words: Words = {
  verdicts: {
    'runs-clear': (data, say) =>
      `Even the tightest parts leave ${say.quantity(Number(data['least']), micro)} of clearance.`,
    'may-preload': (data, say) =>
      `Usually clear, but the tightest parts together run ${say.quantity(-Number(data['least']), micro)} ` +
      'preloaded: hot, noisy and short-lived. Measure seat and ring, or take a group with more clearance ' +
      `than ${data['group']}.`,
    preloaded: (data, say) =>
      `More likely than not it runs preloaded, by ${say.quantity(-Number(data['mean']), micro)} in the ` +
      `mean and up to ${say.quantity(-Number(data['least']), micro)}: a bearing with ` +
      `${named(data['group'])} is apt to run hot here. ` +
      'Measure seat and ring, or take a larger group or a looser fit.',
    'always-preloaded': (data, say) =>
      `Runs preloaded even with the loosest parts, by ${say.quantity(-Number(data['most']), micro)} at ` +
      `least. A bearing with ${named(data['group'])} will run hot and fail early here. ` +
      'Take a larger group or a looser fit.',
    'outer-loose-warm': () =>
      'In the mean the warm housing has grown away from the outer ring: it no longer squeezes it, and no longer holds it either.',
  },
  problems: {
    'clearance-outside-table': (data, say) =>
      `The clearance table held here does not reach a bore of ${say.quantity(Number(data['got']), mm)}.`,
    'bore-too-large': (data, say) =>
      `The bore (${say.quantity(Number(data['bore']), mm)}) must be smaller than the outside diameter ` +
      `(${say.quantity(Number(data['outside']), mm)}).`,
    'raceway-order': (data, say) =>
      'The raceways must lie between bore and outside diameter, the inner one smaller; ' +
      `${say.quantity(Number(data['inner']), mm)} and ${say.quantity(Number(data['outer']), mm)} do not.`,
    'no-shaft-wall': (data, say) =>
      `The hole through the shaft (${say.quantity(Number(data['hole']), mm)}) must be smaller than the ` +
      `bearing's bore (${say.quantity(Number(data['bore']), mm)}).`,
    'no-housing-wall': (data, say) =>
      `The boss (${say.quantity(Number(data['outside']), mm)}) must be larger outside than the bearing ` +
      `(${say.quantity(Number(data['bearing']), mm)}).`,
    'least-above-most': () => 'The least interference is larger than the most. Change the two over.',
  },
};
