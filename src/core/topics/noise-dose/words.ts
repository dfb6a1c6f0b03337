import type { Words } from '../../contract/words.ts';

const minutes = (n: number | string | undefined) => (Number(n) === 1 ? '1 minute is' : `${n} minutes are`);

export const words: Words = {
  verdicts: {
    'niosh-over': (d) =>
      `${d['dose']} % of NIOSH’s daily dose on bare ears (85 dB(A), half the time for every 3 dB; NIOSH 98-126, 1998). ` +
      'Stop the loud work for today, or have protectors that are enough on in all of it.',
    'niosh-within': (d) =>
      `${d['dose']} % of NIOSH’s daily dose on bare ears so far (NIOSH 98-126, 1998). ` +
      `At ${d['next']} dB(A) ${minutes(d['left'])} left. Wear protectors in all of it.`,
    'osha-over-in-all': (d) =>
      `${d['dose']} % of OSHA’s dose: over 90 dB(A) as an average (29 CFR 1910.95). For the limit itself ` +
      `OSHA counts levels from 90 up alone, ${d['limit']} %. ` +
      'Ears count all of it: cut the noise or the time, and wear protectors.',
    'osha-over': (d) =>
      `${d['dose']} % of OSHA’s dose: over the US limit, 90 dB(A) over 8 h (29 CFR 1910.95). ` +
      'The employer must cut the noise or the time, and protectors must be worn.',
    'osha-action': (d) =>
      `${d['dose']} % of OSHA’s dose: at the US action level, 85 dB(A) over 8 h, or over it. ` +
      'Hearing tests, training and protectors are due (29 CFR 1910.95).',
    'osha-below': (d) =>
      `${d['dose']} % of OSHA’s dose: below the US action level (29 CFR 1910.95). ` +
      'This rule lets time halve only every 5 dB; hearing goes by energy, so go by the stricter one.',
    'eu-over-limit': (d) =>
      `${d['ear']} dB(A) over 8 h at the ear: over the limit of 87 (Directive 2003/10/EC; ` +
      'Great Britain 2005). Stop now and change the work or the protectors.',
    'eu-upper': (d) =>
      `${d['bare']} dB(A) over 8 h: at the upper action value of 85 or over it (Directive 2003/10/EC; ` +
      'Great Britain 2005). Protectors must be worn and the noise be cut.',
    'eu-lower': (d) =>
      `${d['bare']} dB(A) over 8 h: at the lower action value of 80 or over it (Directive 2003/10/EC; ` +
      'Great Britain 2005). Protectors and training must be offered.',
    'eu-below': (d) =>
      `${d['bare']} dB(A) over 8 h: below the action values of Directive 2003/10/EC and Great Britain 2005.`,
    'ear-nothing': () =>
      'By this rule the protectors count for nothing at all. Do not rely on them: use ones with a higher rating.',
    'ear-loud': (d) =>
      `${d['ear']} dB(A) is left at the ear under the protectors. Not enough: wear plugs under muffs, or ones with a higher rating.`,
    'ear-short': (d) =>
      `${d['ear']} dB(A) is left at the ear. Aim for 70 to 80: wear plugs under muffs, or ones with a higher rating.`,
    'ear-deaf': (d) =>
      `${d['ear']} dB(A) is left at the ear: so little that shouts and horns are missed. ` +
      'Keep others in sight, or choose ones of a lower rating.',
    'ear-good': (d) =>
      `${d['ear']} dB(A) is left at the ear: between 70 and 80, as it should be, if they fit and stay on.`,
    'over-115': (d) =>
      `${d['level']} dB(A): OSHA allows nobody in steady noise over 115 without protectors, not for a minute (29 CFR 1910.95, Table G-16).`,
    'check-local': () =>
      'Check today’s rule of your place: laws change, and the stricter one counts. The figures here are of OSHA 29 CFR 1910.95 as seen in November 2026, NIOSH 98-126 (June 1998), Directive 2003/10/EC of 6 February 2003 and Great Britain’s regulations of 2005.',
  },
  problems: {
    'over-a-day': (d) => `The times add up to ${d['hours']} hours. A day has 24.`,
    'no-time': () => 'Enter at least one time that is more than nothing.',
  },
};
