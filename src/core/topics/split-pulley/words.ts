import type { Say, Words } from '../../contract/words.ts';

const mm = (say: Say, si: number | string | undefined) => say.quantity(Number(si), ['mm', 'in']);

export const words: Words = {
  figures: { left: ['mm', 'in'] },
  verdicts: {
    'one-go-pinches': (d) =>
      'Do not draw it together in one go. A belt climbs only while it moves round: at a standstill it ' +
      `would have to give up ${Math.round(Number(d['squeeze']))} % of its width. ` +
      'It is nipped instead, the screws come tight on the belt, the halves tilt and the blades run out of ' +
      'true. Go by small turns, and turn the blades after each.',
    'one-pass-enough': () =>
      'The gap is so small that one pass closes it. Turn the blades afterwards all the same, and try the screws again.',
    'draws-tight': () =>
      'The belt path, closed, is longer than the belt: it draws tight. Check the tension by a push at mid-span.',
    'stays-slack': (d, say) =>
      `Even closed, ${mm(say, d['left'])} of belt is left over: it never draws tight. ` +
      'Measure belt and centers again; then the belt is too long or worn, the spacers are too thick, or ' +
      'the shafts stand too close.',
    'belt-width-right': () => 'The belt is as wide as the pulley is made for.',
    'belt-narrow': () =>
      'Narrower than the pulley is made for: it lies deeper, draws less tight, and turns the blades faster. Replace it, and check the blade speed against the mark before cutting.',
    'belt-wide': () =>
      'Wider than the pulley is made for: it lies higher, can stick out of the V, and draws too tight. Check the width it is made for and the marks on the belt against the manual.',
    'rides-out': () =>
      'The pitch line of the belt lies outside the rim: the V no longer holds it. Wrong belt, or the halves are drawn too close.',
  },
  problems: {
    'gap-not-closing': (d, say) =>
      `The gap left at the end must be smaller than the gap at the start (${mm(say, d['start'])}).`,
    'belt-at-the-axle': (d, say) =>
      `With that gap the belt would lie ${mm(say, d['climb'])} lower, at the axle. Enter a smaller gap, or check the angle.`,
    'pulleys-touch': (d, say) => `The shafts must be more than ${mm(say, d['least'])} apart, or the pulleys touch.`,
  },
};
