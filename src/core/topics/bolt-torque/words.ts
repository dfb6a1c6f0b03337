import type { Say, Words } from '../../contract/words.ts';

const mm = (say: Say, si: number | string | undefined) => say.quantity(Number(si), ['mm', 'in']);

export const words: Words = {
  verdicts: {
    'may-overload': (data) =>
      `If friction is at its lowest the bolt reaches ${Math.round(100 * Number(data['share']))} % of its ` +
      'proof load and may stretch. Lower the share, or use a fresh oiled bolt and a torque wrench.',
    'keep-dry': () => 'For a clean, dry thread. Oil or paste on it at this torque stretches or breaks the bolt.',
    'greased-thread': () =>
      'Oil or paste goes on the thread and under the head, the same way every time. Do not use a dry figure on such a thread: the bolt stretches.',
    'left-hand': () => 'Left-hand thread: tighten counter-clockwise, loosen clockwise. Mark it.',
    'locker-on-oil': () =>
      "Thread-locker does not hold on an oiled thread or on anti-seize, and the torque above is for such a thread. Degrease both threads and choose a dry state, with the data sheet's factor where it has one; or leave the locker out.",
    'thread-locker': () =>
      "Degrease both threads first. Thread-locker changes the friction: use its data sheet's factor if it has one, and let it cure before the machine runs. Do not use it with anti-seize.",
    'casting-governs': (data, say) =>
      `The casting gives way before the bolt: the torque is cut to what ${mm(say, data['engaged'])} of thread bear, half ` +
      `their stripping force. The full figure for this bolt in steel would strip or tear it. For the bolt to set the ` +
      `torque, ${mm(say, data['needed'])} must be engaged, or a steel thread insert.`,
    'casting-bears-it': () =>
      'The thread in the casting bears the full torque of this bolt twice, if it is sound. Clean and dry the hole, start ' +
      'by hand for five turns, tighten cold. A repaired or oily thread bears less.',
    'plated-12-9': () =>
      'Do not fit a plated 12.9 screw. Plating can leave hydrogen in steel this hard, and it breaks hours or days after ' +
      'tightening. Take a black oiled one, or one coated with zinc flakes.',
  },
  problems: {},
};
