import { words as limits } from '../limits-fits/index.ts';
import { words as sizes } from '../bearing-size/index.ts';
import { ceilingWords } from '../warming/index.ts';
import type { Sentence, Words } from '../../contract/words.ts';
import { reasons } from './reasons.ts';

const micro = ['µm', 'thou'] as const;
const by: (text: (amount: string) => string) => Sentence = (text) => (data, say) =>
  text(say.quantity(Number(data['by'] ?? data['lost'] ?? data['difference']), micro));

export const words: Words = {
  verdicts: {
    ...ceilingWords,
    ...reasons,
    'fit-clearance': () => 'Always loose. The ring can creep if the load turns against it.',
    'fit-transition': () =>
      'Can come out a little loose or a little tight. Measure seat and ring before you choose press or heat.',
    'fit-interference': () => 'Always tight.',
    'zone-as-advised': (data) =>
      `${data['zone']} holds about as tightly as ${data['advised']}, which the table recommends here.`,
    'zone-tighter': (data, say) =>
      `${data['zone']} is ${say.quantity(Number(data['difference']), micro)} tighter in the mean than the table's ${data['advised']}. Check the clearance left in the bearing.`,
    'zone-looser': (data, say) =>
      `${data['zone']} is ${say.quantity(Number(data['difference']), micro)} looser in the mean than the table's ${data['advised']}. A ring that turns against the load will creep.`,
    'seat-good': (data, say) =>
      `Good: within what the zone allows, ${say.quantity(Number(data['mean']), micro)} in the mean.`,
    'seat-loose': by(
      (a) =>
        `Loose: ${a} past what the zone allows, with clearance. The ring will creep, and creep wears the seat further. Do not fit it so.`,
    ),
    'seat-slack': by(
      (a) =>
        `Not tight enough: ${a} below what the zone allows. Under load and heat the ring will creep. Do not fit it so.`,
    ),
    'seat-tight': by(
      (a) =>
        `Too tight: ${a} past what the zone allows. The bearing loses that much of its clearance and may run hot. Check what clearance is left, or fit one with more.`,
    ),
    'needs-shaft': by(
      (a) =>
        `The shaft wants ${a} more. Replace it, or have it built up and ground to size. A retaining compound is for clean, slight, lightly loaded gaps within its data sheet. Do not center-punch or knurl the seat: the points crush and the ring creeps again.`,
    ),
    'needs-light-housing': by(
      (a) =>
        `The housing wants ${a} less bore. Have it bored and sleeved, or replace it. A retaining compound lets go as the warm housing grows away from the ring. Do not center-punch or peen the bore.`,
    ),
    'needs-iron-housing': by(
      (a) =>
        `The housing wants ${a} less bore. Have it bored and sleeved, or replace it; a retaining compound within its data sheet holds a slight, clean gap. Do not center-punch or peen the bore.`,
    ),
    'form-even': () => 'Round and straight enough: taper and out-of-round are each within half the tolerance.',
    'form-uneven': (data, say) =>
      `Taper or out-of-round reaches ${say.quantity(Number(data['worst']), micro)}; half the tolerance, ${say.quantity(Number(data['allowed']), micro)}, is the usual limit. The ring takes the shape of its seat.`,
    'split-and-tight': () =>
      "A split housing is not made for a tight ring: it squeezes the ring oval at the joint. Change to a one-piece housing or follow the machine's manual.",
    'solid-steel-only': () => 'The table is for a solid steel shaft. A hollow or a softer one may need a tighter fit.',
    'light-housing': (data, say) =>
      `Aluminum and magnesium grow more than the ring: ${say.quantity(Number(data['lost']), micro)} of hold is lost when warm. The table is for iron and steel and allows tighter fits here; ${data['zone']} keeps as much when warm.`,
    'light-housing-none': by(
      (a) =>
        `Aluminum and magnesium grow more than the ring: ${a} of hold is lost when warm, more than any usual zone makes up for. Hold the ring with a plate, a snap ring or a steel liner as well.`,
    ),
  },
  problems: {
    'size-outside': limits.problems['size-outside'] ?? (() => ''),
    'not-a-zone': limits.problems['not-a-zone'] ?? (() => ''),
    'zone-undefined': limits.problems['zone-undefined'] ?? (() => ''),
    'zone-ends': limits.problems['zone-ends'] ?? (() => ''),
    'ring-outside-table': sizes.problems['ring-outside-table'] ?? (() => ''),
    'reading-far': (data, say) =>
      `A reading of ${say.quantity(Number(data['got']), ['mm', 'in'])} is too far from the seat size of ${say.quantity(Number(data['size']), ['mm', 'in'])} to be this seat. Read the micrometer again, or put the size right.`,
    'zone-of-a-hole': (data) =>
      `${data['got']} is a zone of a hole. A shaft seat needs a small letter, like ${String(data['got']).toLowerCase()}.`,
    'zone-of-a-shaft': (data) =>
      `${data['got']} is a zone of a shaft. A housing seat needs a capital letter, like ${String(data['got']).toUpperCase()}.`,
  },
};
