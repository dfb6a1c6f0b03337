import type { Say, Sentence, Words } from '../../contract/words.ts';

const micro = ['µm', 'thou'] as const;
const mm = ['mm', 'in'] as const;

function named(group: number | string | undefined): string {
  return group === 'CN' ? 'normal clearance' : `clearance ${group}`;
}

/** What to do where only the tightest parts are too tight. */
function ifTight(data: Parameters<Sentence>[0], say: Say): string {
  const { kept, always } = data;
  if (always !== undefined) return `If they are among the tightest, a bearing with ${named(always)} still keeps some.`;
  return kept === undefined
    ? 'If they are among the tightest, hold each fit against the zone Bearing fit names for its load.'
    : `If they are among the tightest, take ${named(kept)}: it keeps ${say.quantity(Number(data['left']), micro)} in the mean.`;
}

/** What to do: a larger group under the fits the load asks for, or, where none is enough, other fits. */
function wayOut(data: Parameters<Sentence>[0], say: Say): string {
  const { kept, always } = data;
  if (kept === undefined)
    return 'No larger group makes up for these fits: hold each against the zone Bearing fit names for its load.';
  const keeps =
    always === kept
      ? `A bearing with ${named(kept)} keeps some here even with the tightest parts`
      : `A bearing with ${named(kept)} keeps ${say.quantity(Number(data['left']), micro)} in the mean` +
        (always === undefined ? '' : `, one with ${named(always)} some even with the tightest parts`);
  return (
    `${keeps}. Where the manual leaves the group open, take that one. ` +
    'Do not loosen a fit that its load asks for: Bearing fit names the zone.'
  );
}

export const words: Words = {
  verdicts: {
    'runs-clear': (data, say) =>
      `Even the tightest parts leave ${say.quantity(Number(data['least']), micro)} of clearance.`,
    'may-preload': (data, say) =>
      `Usually clear, with ${say.quantity(Number(data['mean']), micro)} in the mean, but the tightest parts ` +
      `together run ${say.quantity(-Number(data['least']), micro)} preloaded: hot, noisy and short-lived. ` +
      `Measure seat and ring. ${ifTight(data, say)}`,
    'preloaded-warm': (data, say) =>
      `Fitted and cold it keeps ${say.quantity(Number(data['cold']), micro)} in the mean. Warm, the mean is ` +
      `preloaded by ${say.quantity(-Number(data['mean']), micro)} and the tightest parts by ` +
      `${say.quantity(-Number(data['least']), micro)}: ${named(data['group'])} is at its end here. ` +
      wayOut(data, say),
    preloaded: (data, say) =>
      `More likely than not it runs preloaded, by ${say.quantity(-Number(data['mean']), micro)} in the ` +
      `mean and up to ${say.quantity(-Number(data['least']), micro)}, and is tight when cold already: a bearing with ` +
      `${named(data['group'])} is apt to run hot here. ` +
      wayOut(data, say),
    'always-preloaded': (data, say) =>
      `Runs preloaded even with the loosest parts, by ${say.quantity(-Number(data['most']), micro)} at ` +
      `least. A bearing with ${named(data['group'])} will run hot and fail early here. ` +
      wayOut(data, say),
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
  figures: { cold: micro, left: micro, mean: micro, least: micro, most: micro },
};
