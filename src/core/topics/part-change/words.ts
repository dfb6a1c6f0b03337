import type { Words } from '../../contract/words.ts';

export const words: Words = {
  verdicts: {
    'looks-too-far': (d) =>
      `No advice: the time looked ahead is ${d['lives']} lives of such a part, and only one failure is counted in it. ` +
      'Look ahead less far: to the next service, or one life at most.',
    'change-now': (d, say) =>
      `Change it while the machine is open: ${say.money(Number(d['between']))} cheaper than the chance of opening it again.`,
    'leave-it': (d, say) =>
      `Leave it: changing it now would cost ${say.money(Number(d['between']))} more than the chance of ` +
      'opening the machine again. Change it all the same if it is cracked, loose, rough or leaking.',
    'about-even': (d, say) =>
      `Both ways cost about the same: ${say.money(Number(d['between']))} between them, and the life is a guess. ` +
      'Let what you see decide: change it at the first sign of wear.',
    'does-not-wear': () => 'At no age: a part like this does not wear out by running.',
    'no-age-pays': () => 'At no age: over the hours it must last, a new one costs more than it saves.',
    'replace-it': (d, say) =>
      `Replace the failed part: ${say.money(Number(d['between']))} cheaper, with the chance of another stop counted in.`,
    'mend-it': (d, say) =>
      `Mend the failed part: ${say.money(Number(d['between']))} cheaper, with the chance of another stop counted in.`,
    'fails-by-chance': () =>
      'With a shape of 1 an old part is as good as a new one: it fails by chance, and changing it early gains nothing.',
    'fails-early': () =>
      'With a shape below 1 a part that has run is better than a new one: look for poor fitting or a bad batch.',
  },
  problems: {},
};
