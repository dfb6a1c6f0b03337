import type { Words } from '../../contract/words.ts';

const mm = ['mm', 'in'] as const;

export const words: Words = {
  verdicts: {
    'manual-first': () =>
      "Where the machine's manual gives a torque, use that. This figure is for a bolt nobody gave one for.",
    'may-overload': (data) =>
      `If friction is at its lowest the bolt reaches ${Math.round(100 * Number(data['share']))} % of its proof load and may stretch. Lower the share, or use a fresh oiled bolt and a torque wrench.`,
    'keep-dry': () => 'For a clean, dry thread. Oil or paste on it at this torque stretches or breaks the bolt.',
    'greased-thread': () =>
      'Grease thread and underside of the head the same way every time. Do not use a dry figure on a greased thread: the bolt stretches.',
    'left-hand': () => 'Left-hand thread: tighten counter-clockwise, loosen clockwise. Mark it.',
    'thread-locker': () =>
      "Degrease both threads first. Thread-locker changes the friction: use its data sheet's factor if it has one, and let it cure before the machine runs. Do not use it with anti-seize.",
    'light-thread': (data, say) =>
      `The thread in the casting strips before the bolt does. Have at least ${say.quantity(Number(data['depth']), mm)} of thread in it, clean and dry the hole, and use the manual's lower torque if there is one.`,
  },
  problems: {},
};
