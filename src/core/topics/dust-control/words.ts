import type { Say, Words } from '../../contract/words.ts';

const mg = (d: Readonly<Record<string, number | string>>, key: string, say: Say) =>
  say.quantity(Number(d[key]), ['mg/m3', 'mg/m3']);

export const words: Words = {
  verdicts: {
    'dry-inside': () =>
      'Do not cut. Dry cutting indoors or in an enclosed place fills it with dust that takes hours to settle; no vacuum and no mask makes it right. Put water on the blade or use another way.',
    dry: () =>
      'Do not cut dry, outdoors either. Put water on the blade. No rule seen here lets this work be done dry without measuring the air first.',
    'assess-shop': () =>
      'A task done often in the same place, such as a test pit, cannot go by the construction table (29 CFR 1910.1053(a)(3), 2016). Cut wet, have the air measured, and until then wear a fit-tested respirator.',
    'no-table': () =>
      'The rules seen of this place give a limit and no table of tasks. Cut wet, have the air measured, and until then wear the mask your safety authority asks for.',
    'not-there': (d) =>
      `${d['task']}: the US table does not list it indoors or in an enclosed place. ` +
      'Do not start: the exposure must be assessed first (29 CFR 1926.1153(d), 2016).',
    'wrong-control': (d) =>
      `${d['task']}: the US table lists it only with ${d['asks']}. ` +
      'Do not start without it, or the exposure must be assessed first (29 CFR 1926.1153, 2016).',
    britain: (d) =>
      `Water on, and a fit-tested mask of factor ${d['factor']} (FFP3, or half mask with P3), outdoors ` +
      'too. So HSE asks for cutting kerbs, blocks and flags.',
    'britain-extraction': (d) =>
      `Extraction made for the saw, with an H or M class unit, and a fit-tested mask of factor ${d['factor']} (FFP3, or ` +
      'half mask with P3). HSE names it beside water, outdoors. Use water where you can; indoors do not cut dry.',
    'table-mask': (d) =>
      `Control on and working all the time, and a fit-tested respirator of factor ${d['factor']} or more ` +
      'for the whole of it (29 CFR 1926.1153 Table 1, 2016). Indoors the rule asks for extra exhaust as well.',
    'table-none': () =>
      'With the control on and working all the time the US table asks for no respirator (29 CFR 1926.1153 Table 1, 2016). That is the least it asks, not clean air: wear one anyway, and stop at the first dust.',
    'engine-inside': () =>
      'Do not run an engine indoors or in an enclosed place. Exhaust kills within minutes, with doors open and fans on too. The rows for indoors are for electric, air and hydraulic tools.',
    'enclosed-means': () =>
      'Any place where dust can hang: a room with its windows open, a tent, a stairwell, a garage with the door up, a deep pit. Ask one question: can dust drift off freely on all sides? If not, it is enclosed. The US rule does not define it; training sheets from OSHA’s guide do so.',
    'over-limit': (d, say) =>
      `${mg(d, 'average', say)} over 8 h, ${d['times']} times the limit of ${mg(d, 'limit', say)}. ` +
      'Stop and change the work: more water, less time, another way. A mask comes on top.',
    'at-action': (d, say) =>
      `${mg(d, 'average', say)} over 8 h: not over the limit of ${mg(d, 'limit', say)}, but at the action ` +
      'level or over it. It must be measured again, and the water and time looked at. It lets nobody cut dry.',
    'under-limit': (d, say) =>
      `${mg(d, 'average', say)} over 8 h: not over the limit of ${mg(d, 'limit', say)} on the day it was ` +
      'measured. Less is better: keep water and mask on. It lets nobody cut dry, indoors least of all.',
    'long-over': (d, say) =>
      `The shift has ${d['hours']} h. Good practice (Brief and Scala) takes the limit down to ` +
      `${mg(d, 'limit', say)} for so long a shift, and the air is over it. ` +
      'The US rule goes by the worst 8 h; not all places do.',
    'long-within': (d, say) =>
      `The shift has ${d['hours']} h. Good practice (Brief and Scala) takes the limit down to ` +
      `${mg(d, 'limit', say)}; the air is not over that. The US rule goes by the worst 8 h; not all places do.`,
    'mask-factor': (d) =>
      `Until the air is right: a fit-tested respirator of factor ${d['factor']} or more (${d['what']}). ` +
      'No beard under the seal. Factors of another country are not the same.',
    'mask-none': () => 'Do not work in this air. No filter mask on this scale is enough.',
    'mask-elsewhere': () =>
      'Ask your safety authority which mask its scale of factors asks for: scales differ from country to country, and must not be mixed.',
    'filter-any': () => 'Particle filter of 95, 99 or 100, series N, R or P. Two-stroke exhaust near by: no N.',
    'filter-r-p': () => 'Oil mist in the air: no N filter. R for one shift of 8 h at most, or P (NIOSH 96-101).',
    'filter-p': () => 'Oil mist in the air, and worn for more than one shift of 8 h: a P filter only (NIOSH 96-101).',
    'filter-p3-full': () =>
      'P3 filters in the mask named here. FFP3 and half masks end at factor 20: they are not enough.',
    'filter-p3': () => 'FFP3, or a half mask with P3 filters, fit-tested.',
    'check-local': (d) =>
      `Check today’s rule of your place: ${d['law']}, ${d['date']}, is what was seen here, and laws change.`,
  },
  problems: {
    'over-a-day': (d) => `The hours add up to ${d['hours']}. A day has 24.`,
    'over-the-shift': (d) => `The hours measured add up to ${d['hours']}, and the shift has ${d['shift']}.`,
    'no-such-day': (d) => `"${d['got']}" is no day of the calendar. Write it YYYY-MM-DD, like 2026-03-14.`,
    'no-time': () => 'Enter the hours that were measured.',
  },
};
