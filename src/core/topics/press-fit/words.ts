import type { Sentence, Words } from '../../contract/words.ts';

const force: (text: (kilonewtons: string) => string) => Sentence = (text) => (data, say) =>
  text(say.quantity(Number(data['force']), ['kN', 'lbf'], 2));
const share: (text: (percent: string) => string) => Sentence = (text) => (data) =>
  text(`${Math.round(100 * Number(data['share']))} %`);
const mm = ['mm', 'in'] as const;

export const words: Words = {
  figures: { force: ['kN', 'lbf'] },
  verdicts: {
    'tool-none': () => 'No force: even the tightest pair slides together. It holds nothing by itself.',
    'tool-vise': force(
      (f) => `Up to ${f}: a sturdy vise with square plates can do it. Push through the tight ring only.`,
    ),
    'tool-arbor': force(
      (f) => `Up to ${f}: an arbor press, not a vise and not a hammer. Warming is easier on the parts.`,
    ),
    'tool-hydraulic': force((f) => `Up to ${f}: a hydraulic press with a gauge. Warming is easier on the parts.`),
    'tool-refused': () =>
      'No tool: the outer part does not stand this fit. Less interference, a thicker or a stronger outer part is what it needs.',
    'tool-too-much': force(
      (f) => `Up to ${f}: more than a shop press should be asked for. Warm or chill the parts, or change the fit.`,
    ),
    'stress-fine': share((s) => `The outer part is stressed to ${s} of its yield strength at most.`),
    'stress-high': share(
      (s) =>
        `The outer part is stressed to ${s} of its yield strength: little is left for the load. Look for thin walls and sharp corners.`,
    ),
    'stress-yields': share(
      (s) =>
        `The outer part would be stressed to ${s} of its yield strength: it stretches for good and the fit is lost. Do not press it.`,
    ),
    'stress-cracks': share((s) => `The iron would be stressed to ${s} of its strength: it can crack. Do not press it.`),
  },
  problems: {
    'no-wall': (data, say) =>
      `The outer part (${say.quantity(Number(data['outside']), mm)}) must be larger outside than the ` +
      `joint (${say.quantity(Number(data['joint']), mm)}).`,
    'no-inner-wall': (data, say) =>
      `The hole through the inner part (${say.quantity(Number(data['bore']), mm)}) must be smaller than ` +
      `the joint (${say.quantity(Number(data['joint']), mm)}).`,
    'least-above-most': () => 'The least interference is larger than the most. Change the two over.',
    'friction-order': () => 'The lowest friction is larger than the highest. Change the two over.',
  },
};
