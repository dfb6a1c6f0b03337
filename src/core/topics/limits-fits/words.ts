import { toUnit } from '../../quantity/index.ts';
import type { Say, Sentence, Words } from '../../contract/words.ts';

/** A size in as many figures as were typed: 3150.0000001 mm must not be refused as "3150 mm". */
function exact(si: number | string | undefined, { system }: Say): string {
  const unit = system === 'metric' ? 'mm' : 'in';
  return `${Number(toUnit(Number(si), unit).toPrecision(12))}\u00a0${unit}`;
}

/** Why a zone was refused, for every topic that asks for one. */
export const zoneProblems: Readonly<Record<string, Sentence>> = {
  'size-outside': (data, say) =>
    `The standard's tables end at ${exact(data['max'], say)}; ${exact(data['got'], say)} is outside them.`,
  'not-a-zone': (data) =>
    `"${data['got']}" is not a tolerance zone. Write letters and a grade, like H7 for a hole or k6 for a shaft.`,
  'zone-undefined': (data, say) =>
    `The standard defines no zone ${data['got']} at ` +
    `${exact(data['size'], say)}.${data['nearest'] ? ` Nearest defined: ${data['nearest']}.` : ''}`,
  'zone-ends': (data, say) =>
    `Zone ${data['got']} ends at 500 mm; the standard has none at ${exact(data['size'], say)}. ` +
    'Above 500 mm only d, e, f, g, h, js, k and m to u are left, in grades 1 to ' +
    `18.${data['nearest'] ? ` Nearest defined: ${data['nearest']}.` : ''}`,
  'zone-of-a-pair': (data) =>
    `"${data['got']}" is a hole and a shaft. Write one of them here: ${data['hole']} for the hole or ${data['shaft']} for the shaft.`,
};

export const words: Words = {
  verdicts: {
    'fit-clearance': () => 'Always loose: every shaft in its limits slides into every hole in its limits.',
    'fit-transition': () =>
      'Can come out loose or tight, depending on where in its limits each part was made. Measure both parts.',
    'fit-interference': () =>
      'Always tight: every shaft in its limits is larger than every hole in its limits. Press it or warm it.',
  },
  problems: {
    ...zoneProblems,
    'grade-undefined': (data) =>
      `The standard has no value for grade ${data['got']} here. Defined: ${data['nearest']}.`,
    'two-of-a-kind': (data) =>
      `A fit needs a hole and a shaft; both zones are of a ${data['kind']}. Holes have capital letters, shafts small ones.`,
  },
};
