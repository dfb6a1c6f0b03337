import type { Say, Words } from '../../contract/words.ts';

const rpm = (say: Say, si: number | string | undefined) => say.quantity(Number(si), ['rpm', 'rpm']);
const mm = (say: Say, si: number | string | undefined) => say.quantity(Number(si), ['mm', 'in']);

export const words: Words = {
  figures: { highest: ['m/s', 'ft/min'] },
  verdicts: {
    'within-marked': () =>
      'Within the speed marked on the blade. The guard, the flanges and the bore must fit this blade too.',
    'near-marked': () =>
      'Within the marked speed, but close to it. Measure the shaft with a tachometer before the blade goes on.',
    'over-marked': () => 'Faster than the blade is marked for. Do not fit this blade to this machine.',
    'over-marked-free': () =>
      'Faster than the blade is marked for as soon as it runs free: a belt slips only under load, and out of the cut the shaft turns at its full speed. Do not fit this blade to this machine.',
    'no-depth': () => 'The flange is as large as the blade at this gap: nothing is left to cut with.',
    'marks-agree': () => 'The marks on the blade say the same, but for rounding.',
    'marks-contradict': (d, say) =>
      `The marks on the blade contradict each other: they come to ${rpm(say, d['lowest'])} and to ` +
      `${rpm(say, d['highest'])}. The lower one is used here. ` +
      'Do not fit the blade until whoever sold it has cleared that up.',
    'within-guard': () => 'The guard is made for a blade of this size.',
    'under-guard': () =>
      'Much smaller than the guard is made for: it fits, cuts less deep and at a lower surface speed, and the guard leaves more of it open. Set the guard close.',
    'over-guard': () =>
      'Larger than the guard is made for. Do not fit it, and do not take the guard off to make it fit.',
    'within-plate': () => 'Within the speed on the machine’s plate.',
    'over-plate': () =>
      'Faster than the machine’s plate says. The engine is set too fast or a pulley is wrong: find out before any blade goes on.',
    'worn-abrasive': () =>
      'An abrasive wheel gets slower at the rim as it wears. The speed marked on it still holds: this page does not raise it, and a belt-driven saw can’t.',
    'worn-diamond': () =>
      'A diamond blade hardly changes its diameter. If it measures less than printed, look why: worn-out segments, a lost segment, or another blade than the label says. The marked speed is not raised.',
    'larger-than-printed': () =>
      'It measures more than is printed on it. Measure again. If it stays so, the label is another blade’s and none of its marks can be trusted: do not fit it.',
    'depth-reached': () => 'This blade reaches the depth wanted.',
    'depth-larger': (d, say) =>
      `Needs a blade of ${mm(say, d['needed'])}; the guard admits that size. Check its marked speed first.`,
    'depth-larger-ask-guard': (d, say) =>
      `Needs a blade of ${mm(say, d['needed'])}. Fit it only if the guard and the machine’s plate admit that size.`,
    'depth-guard-refuses': (d, say) =>
      `Needs a blade of ${mm(say, d['needed'])}, larger than the guard is made for. ` +
      'Do not fit it: cut from both sides, or use another machine.',
    'depth-arm-too-short': () => 'Deeper than the arm reaches. Cut from both sides, or use another machine.',
    'twin-deeper-than-half': () =>
      'Deeper than half the blade: the two cuts leave a core, the core is broken out, and the slim arm follows the blades into the slot for the next plunge.',
    'twin-short-arm': () => 'With this reach the head goes no deeper than half its blade.',
  },
  problems: {
    'flange-too-large': (data, say) =>
      `The flange or other part (${mm(say, data['got'])}) must be smaller than the blade (${mm(say, data['max'])}).`,
    'deeper-than-blade': (d, say) => `A cut can’t be deeper than the blade is wide (${mm(say, d['max'])}).`,
    'no-mark': () => 'Enter at least one of the speeds marked on the blade.',
  },
};
