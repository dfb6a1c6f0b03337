import { zoneProblems } from '../limits-fits/index.ts';
import { ringOutsideTable } from '../bearing-size/index.ts';
import { ceilingWords } from '../warming/index.ts';
import type { Say, Sentence, Words } from '../../contract/words.ts';

type Data = Parameters<Sentence>[0];

const micro = ['µm', 'thou'] as const;

/** One length of a verdict's data, as people write it. */
function length(data: Data, key: string, say: Say): string {
  return say.quantity(Number(data[key]), micro);
}

/** "12 µm of interference" or "12 µm of clearance". */
function hold(data: Data, say: Say): string {
  const mean = Number(data['mean']);
  return `${say.quantity(Math.abs(mean), micro)} of ${mean < 0 ? 'clearance' : 'interference'}`;
}

/** A sentence about the amount a seat is out by. */
const by: (text: (amount: string, zone: string) => string) => Sentence = (text) => (data, say) =>
  text(length(data, 'by', say), String(data['zone']));

/** One sentence for each row of the recommendation. */
const reasons: Words['verdicts'] = {
  'why-shaft-still-slides': () =>
    'The load always bears on the same spot of the inner ring, so it does not creep, and it must be free to slide along the shaft.',
  'why-shaft-still': () =>
    'The load always bears on the same spot of the inner ring, so it does not creep and needs no interference.',
  'why-shaft-turns-light': () =>
    'The load travels round the inner ring and would roll a loose one round the shaft; a light load needs only a little hold.',
  'why-shaft-turns': () =>
    'The load travels round the inner ring and would roll a loose one round the shaft, so it must be tight.',
  'why-shaft-turns-heavy': () =>
    'The load travels round the inner ring and a heavy one loosens it, so it must be tight.',
  'why-shaft-turns-heavy-small': () =>
    'The load travels round the inner ring. The table has no heavy row up to 18 mm; this is the tightest it gives for so small a shaft.',
  'why-housing-turns-light': () =>
    'The load travels round the outer ring and would roll a loose one round the housing; a light load needs a moderate hold.',
  'why-housing-turns': () =>
    'The load travels round the outer ring and would roll a loose one round the housing, so it must be tight.',
  'why-housing-turns-thin': () =>
    'The load travels round the outer ring, it is heavy, and a thin wall gives way: it needs the tightest of the usual fits.',
  'why-housing-unclear-slides': () =>
    'The load changes direction but is not heavy: close, yet the ring can still be moved.',
  'why-housing-unclear': () => 'The load changes direction, so the outer ring must be held, though not hard.',
  'why-housing-unclear-heavy': () =>
    'The load changes direction and is heavy or comes in shocks, so the outer ring must be held tightly.',
  'why-housing-still-hot-shaft': () =>
    'Heat comes in through the shaft, so the outer ring needs room to grow and slide.',
  'why-housing-still-shock': () =>
    'The load stays on one spot but comes in shocks that let go in between, so the ring needs a closer hold.',
  'why-housing-still': () =>
    'The load always bears on the same spot of the outer ring, so it does not creep, and a sliding fit lets the shaft grow.',
};

/** The seat against the zone it is held to. */
const seats: Words['verdicts'] = {
  'seat-good': (data, say) => `Good: every reading lies within ${data['zone']}, ${hold(data, say)} in the mean.`,
  'seat-near-limit': (data, say) =>
    `At the limit of ${data['zone']}: within it by ${length(data, 'by', say)}, less than your gauge can ` +
    `tell (${length(data, 'gauge', say)}). Measure again before you count on it.`,
  'seat-at-limit': (data, say) =>
    `At the limit of ${data['zone']}: ${length(data, 'by', say)} past it on the ${data['side']} side, ` +
    `less than your gauge can tell (${length(data, 'gauge', say)}). ` +
    'Clean the seat, set the gauge anew and measure again.',
  'seat-fit-right': (data, say) =>
    `The fit is right: ${hold(data, say)} in the mean with the ring you measured, as ${data['zone']} is ` +
    `meant to give. The seat by itself is not within ${data['zone']}: another bearing may fit ` +
    'otherwise, so measure that one too.',
  'seat-crooked': (data, say) =>
    `Within ${data['zone']}, but not round or straight enough: readings differ by ` +
    `${length(data, 'worst', say)}. The ring takes the shape of its seat.`,
  'seat-tight': by(
    (a, zone) =>
      `Too tight: ${a} past the limit of ${zone} at the tightest place. ` +
      'The bearing can lose that much more of its clearance and may run hot.',
  ),
  'seat-loose': by(
    (a, zone) =>
      `Loose: ${a} past the limit of ${zone} at the loosest place, with clearance. ` +
      'The ring can creep, and creep wears the seat further. Do not fit it so.',
  ),
  'seat-slack': by(
    (a, zone) =>
      `Not tight enough: ${a} past the limit of ${zone} at the loosest place. Under load and heat the ring can creep. Do not fit it so.`,
  ),
  'seat-uneven': (data, say) =>
    `Out of ${data['zone']} on both sides: ${length(data, 'by', say)} too loose at one place, ` +
    `${length(data, 'tightBy', say)} too tight at another. The ring takes the shape of its seat. ` +
    'Do not fit it so.',
  'seat-other-zone': (data, say) =>
    `Outside ${data['zone']} by ${length(data, 'by', say)}, but right for ${data['advised']}, which the ` +
    'table recommends for this load. Find out which zone the drawing or the manual names before you ' +
    'condemn the seat.',
  'advised-met': (data) => `It also keeps to ${data['advised']}, which the table recommends for this load.`,
  'advised-missed': (data, say) =>
    `For ${data['advised']}, which the table recommends for this load, it is ${missed(data, say)}. ` +
    'Where the drawing or the manual names a zone, that one holds.',
  'form-even': () => 'Round and straight enough: taper and out-of-round are each within half the tolerance.',
  'form-at-limit': (data, say) =>
    `Taper or out-of-round reads ${length(data, 'worst', say)}, over the usual limit of half the ` +
    `tolerance (${length(data, 'allowed', say)}) by less than your gauge can tell. Measure again.`,
  'form-uneven': (data, say) =>
    `Taper or out-of-round reaches ${length(data, 'worst', say)}; ` +
    `half the tolerance, ${length(data, 'allowed', say)}, is the usual limit. ` +
    'The ring takes the shape of its seat.',
  'gauge-coarse': (data, say) =>
    `It reads to within ${length(data, 'gauge', say)}, and ${data['zone']} is ` +
    `${length(data, 'tolerance', say)} wide: more than a quarter. ` +
    'Take the mean of several readings, or a finer gauge set on a ring or a block of this size.',
};

function missed(data: Data, say: Say): string {
  switch (data['code']) {
    case 'crooked':
      return 'not round or straight enough';
    case 'uneven':
      return 'too loose at one place and too tight at another';
    case 'tight':
      return `${length(data, 'by', say)} too tight`;
    default:
      return `${length(data, 'by', say)} too loose`;
  }
}

/** What a seat needs that can't stay as it is. */
const needs: Words['verdicts'] = {
  'needs-shaft': by(
    (a) =>
      `The shaft wants ${a} more. Replace it, or have it built up and ground to size. ` +
      'A retaining compound is for clean, slight, lightly loaded gaps within its data sheet. ' +
      'Do not center-punch or knurl the seat: the points crush and the ring creeps again.',
  ),
  'needs-light-housing': by(
    (a) =>
      `The housing wants ${a} less bore. Have it bored and sleeved, or replace it. ` +
      'A retaining compound lets go as the warm housing grows away from the ring. ' +
      'Do not center-punch or peen the bore.',
  ),
  'needs-iron-housing': by(
    (a) =>
      `The housing wants ${a} less bore. Have it bored and sleeved, or replace it; ` +
      'a retaining compound within its data sheet holds a slight, clean gap. ' +
      'Do not center-punch or peen the bore.',
  ),
  'needs-less-shaft': by(
    (a, zone) =>
      `The shaft is ${a} too large for ${zone}. Look for burrs and dirt, then have it ground. ` +
      'Or work out what clearance is left and fit a bearing with more. ' +
      'Do not file it or polish it by hand: it comes out of round.',
  ),
  'needs-wider-housing': by(
    (a, zone) =>
      `The bore is ${a} too small for ${zone}. Look for burrs, paint and dirt, then have it bored or ` +
      'honed. Or work out what clearance is left and fit a bearing with more. ' +
      'Do not scrape it by hand: it comes out of round.',
  ),
  'needs-truing-shaft': () =>
    'Look for burrs and dirt and measure again at more places. If it stays so, replace the shaft, or have the seat built up and ground.',
  'needs-truing-housing': () =>
    'Look for burrs and dirt and measure again at more places. If it stays so, have the bore trued and sleeved.',
};

export const words: Words = {
  verdicts: {
    ...ceilingWords,
    ...reasons,
    ...seats,
    ...needs,
    'fit-clearance': () => 'Always loose. The ring can creep if the load turns against it.',
    'fit-transition': () =>
      'Can come out a little loose or a little tight. Measure seat and ring before you choose press or heat.',
    'fit-interference': () => 'Always tight.',
    'measured-clearance': () => 'Loose as measured. The ring can creep if the load turns against it.',
    'measured-transition': (d) =>
      d['ring'] === 'measured'
        ? 'Loose at one place and tight at another, with the ring you measured.'
        : 'Loose or tight as measured, by the place on the seat and by where in its limits the ring was made.',
    'measured-interference': (d) =>
      d['ring'] === 'measured'
        ? 'Tight as measured, at every place, with the ring you measured.'
        : 'Tight as measured, at every place and with any ring of the class.',
    'takes-clearance': () =>
      'A ring held so takes some of the clearance. Keep the fit its load asks for, and see in Running clearance ' +
      'which group leaves enough: with both fits and the heat it is often C3. Where the manual names a group, that one holds.',
    'zone-as-advised': (data) =>
      data['zone'] === data['advised']
        ? `${data['zone']} is the zone the table recommends here.`
        : `${data['zone']} holds about as tightly as ${data['advised']}, which the table recommends here.`,
    'zone-tighter': (data, say) =>
      `${data['zone']} is ${say.quantity(Number(data['difference']), micro)} tighter in the mean than the ` +
      `table's ${data['advised']}. Check the clearance left in the bearing.`,
    'zone-looser': (data, say) =>
      `${data['zone']} is ${say.quantity(Number(data['difference']), micro)} looser in the mean than the ` +
      `table's ${data['advised']}. A ring that turns against the load will creep.`,
    'split-and-tight': () =>
      "A split housing is not made for a tight ring: it squeezes the ring oval at the joint. Change to a one-piece housing or follow the machine's manual.",
    'solid-steel-only': () => 'The table is for a solid steel shaft. A hollow or a softer one may need a tighter fit.',
    'light-housing': (data, say) =>
      `Aluminum and magnesium grow more than the ring: ${say.quantity(Number(data['lost']), micro)} of ` +
      'hold is lost when warm. The table is for iron and steel and allows tighter fits here; ' +
      `${data['zone']} keeps as much when warm.`,
    'light-housing-none': (data, say) =>
      `Aluminum and magnesium grow more than the ring: ${length(data, 'lost', say)} of hold is lost when ` +
      'warm, more than any usual zone makes up for. Hold the ring with a plate, a snap ring or a steel ' +
      'liner as well.',
  },
  problems: {
    ...zoneProblems,
    'ring-outside-table': ringOutsideTable,
    'reading-far': (data, say) =>
      `A reading of ${say.quantity(Number(data['got']), ['mm', 'in'])} is too far from the seat size of ` +
      `${say.quantity(Number(data['size']), ['mm', 'in'])} to be this seat. ` +
      'Read the micrometer again, or put the size right.',
    'zone-of-a-hole': (data) =>
      `${data['got']} is a zone of a hole. A shaft seat needs a small letter, like ${String(data['got']).toLowerCase()}.`,
    'zone-of-a-shaft': (data) =>
      `${data['got']} is a zone of a shaft. A housing seat needs a capital letter, like ${String(data['got']).toUpperCase()}.`,
  },
  figures: {
    by: micro,
    tightBy: micro,
    mean: micro,
    gauge: micro,
    worst: micro,
    allowed: micro,
    tolerance: micro,
    difference: micro,
    lost: micro,
  },
};
