import type { Say, Words } from '../../contract/words.ts';

const flow = (d: Readonly<Record<string, number | string>>, key: string, say: Say) =>
  say.quantity(Number(d[key]), ['L/min', 'gal/min']);

export const words: Words = {
  figures: { flow: ['L/min', 'gal/min'], wanted: ['L/min', 'gal/min'] },
  verdicts: {
    'flow-short': (d, say) =>
      `${flow(d, 'flow', say)} is less than the ${flow(d, 'wanted', say)} of the manual. ` +
      'Do not cut: clear the nozzles and the filter, raise the pressure, and check again with jug and watch.',
    'flow-enough': (d, say) =>
      `${flow(d, 'flow', say)} reaches the ${flow(d, 'wanted', say)} of the manual. Watch the cut all the same: at the first dust stop.`,
    'flow-low': (d, say) =>
      `${flow(d, 'flow', say)} is less than ${flow(d, 'wanted', say)}, the figure usually named in ` +
      'Britain for a hand-held saw (unchecked). Do not cut with it. Look up the flow in the saw’s manual.',
    'flow-look': (d, say) =>
      `${flow(d, 'flow', say)}. Look up the flow in the saw’s manual and enter it: it decides. ` +
      'US law names no figure (29 CFR 1926.1153 Table 1, 2016): the water must keep visible dust down. ' +
      'Check today’s rule of your place.',
    'check-local': () =>
      'Check today’s rule of your place: laws change. Water on the blade is of 29 CFR 1926.1153 Table 1 (25 March 2016), hazardous waste of 40 CFR 261.22(a)(1) as seen in November 2026; in England slurry goes by the Environment Agency’s position of the day (RPS 235 of 20 November 2020 was seen).',
    'bottle-fades': () =>
      'A pressure bottle fades: its flow falls with its pressure, and dust comes back before it is empty. Pump it up at every stop, and take the flow when it is nearly empty.',
    'slurry-away': () =>
      'Dam it, take it up wet, and carry it away closed. It is alkaline, pH about 11 to 13; watery waste of 12.5 or more is hazardous waste in the USA (40 CFR 261.22). Do not let it into a drain, ditch or stream, and do not thin it. Ask your local authority where it may go.',
  },
  problems: {},
};
