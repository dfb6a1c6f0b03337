import type { Sentence, Words } from '../../contract/words.ts';

const mm = ['mm', 'in'] as const;

/** Shared with `bearing-fit`, which looks up the same rings. */
export const ringOutsideTable: Sentence = (data, say) =>
  `The table held here does not reach ${say.quantity(Number(data['got']), mm)}.`;

export const words: Words = {
  verdicts: {
    'one-fits': (data, say) =>
      `Only ${data['bearing']} fits these readings, to within ${say.quantity(Number(data['worst']), mm)}. Compare with the number on the ring.`,
    'several-fit': (data) =>
      `${data['count']} bearings fit these readings. ${data['bearing']} comes nearest; measure again, width first, or read the number on the ring.`,
    'none-fits': () =>
      'No bearing of the five series held here fits. It may be an inch size, a special, or another kind of bearing. The nearest three are listed.',
    'ring-worn': (data, say) =>
      `The readings differ from new by ${say.quantity(Number(data['bore']), mm)} in the bore and ${say.quantity(Number(data['outside']), mm)} outside. If that is wear, the ring has turned on its seat: measure the seat as well.`,
  },
  problems: {
    'no-such-bearing': (data) =>
      `No bearing "${data['got']}" is held here. Series 618, 619, 60, 62 and 63 with bore codes 00 to 20 are, like 6205. Leave off letters and what follows them: those are each maker's own.`,
    'bore-too-large': (data, say) =>
      `The bore (${say.quantity(Number(data['bore']), mm)}) must be smaller than the outside diameter (${say.quantity(Number(data['outside']), mm)}).`,
    'ring-outside-table': ringOutsideTable,
  },
};
