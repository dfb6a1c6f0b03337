import type { Say, Sentence, Words } from '../../contract/words.ts';

const mm = ['mm', 'in'] as const;

/** Shared with `bearing-fit`, which looks up the same rings. */
export const ringOutsideTable: Sentence = (data, say) =>
  `The table held here does not reach ${say.quantity(Number(data['got']), mm)}.`;

/** No caliper shows less than a hundredth of a millimeter: the rest is the arithmetic's [m]. */
const caliperStep = 1e-5;

function asRead(difference: number | string | undefined, say: Say): string {
  return say.quantity(Math.round(Number(difference) / caliperStep) * caliperStep, mm);
}

export const words: Words = {
  verdicts: {
    'one-fits': (data, say) =>
      Number(data['worst']) < caliperStep / 2
        ? `Only ${data['bearing']} fits these readings, to the last figure of a caliper. Compare with the number on the ring.`
        : `Only ${data['bearing']} fits these readings, to within ${asRead(data['worst'], say)}. Compare with the number on the ring.`,
    'several-fit': (data) =>
      `${data['count']} bearings fit these readings. ${data['bearing']} comes nearest; ` +
      'measure again, width first, or read the number on the ring.',
    'none-fits': () =>
      'No bearing of the five series held here fits. It may be an inch size, a special, or another kind of bearing. The nearest three are listed.',
    'ring-worn': (data, say) =>
      `The readings differ from new by ${asRead(data['bore'], say)} in the bore and ` +
      `${asRead(data['outside'], say)} outside. If that is wear, the ring has turned on its seat: measure ` +
      'the seat as well.',
    'number-read': (data) =>
      [
        `Read as ${data['number']}`,
        data['group'] ? `, clearance ${data['group']}` : '',
        data['ringClass'] ? `, class ${data['ringClass']}` : '',
        '.',
        data['left'] ? ` Left out: ${data['left']}. Seals, shields, cage and grease change no size.` : '',
      ].join(''),
  },
  problems: {
    'no-such-bearing': (data) =>
      `No bearing "${data['got']}" is held here. Series 618, 619, 60, 62 and 63 with bore codes 00 to 20 ` +
      'are, like 6205. Letters before and after may stay.',
    'clearance-two-ways': (data) =>
      `The number says clearance ${data['marked']}, the choice says ${data['chosen']}. Leave one of them out.`,
    'class-two-ways': (data) =>
      `The number says class ${data['marked']}, the choice says ${data['chosen']}. Leave one of them out.`,
    'bore-too-large': (data, say) =>
      `The bore (${say.quantity(Number(data['bore']), mm)}) must be smaller than the outside diameter ` +
      `(${say.quantity(Number(data['outside']), mm)}).`,
    'ring-outside-table': ringOutsideTable,
  },
  figures: { worst: mm, bore: mm, outside: mm },
};
