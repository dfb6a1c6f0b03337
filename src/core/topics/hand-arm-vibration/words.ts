import type { Words } from '../../contract/words.ts';

const minutes = (n: number | string | undefined) => (Number(n) === 1 ? '1 minute' : `${n} minutes`);

export const words: Words = {
  figures: { day: ['m/s2', 'm/s2'], next: ['m/s2', 'm/s2'] },
  verdicts: {
    'over-limit': (d) =>
      `A(8) ${d['day']} m/s², ${d['points']} points: over the limit of 5 m/s². ` +
      'Stop with shaking tools for today. The work must be changed before it goes on (Directive ' +
      '2002/44/EC; Great Britain 2005).',
    'at-action': (d) =>
      `A(8) ${d['day']} m/s², ${d['points']} points: at the action value of 2.5 m/s² or over it. ` +
      'Share the work and use a tool that shakes less. ' +
      `At ${d['next']} m/s² the limit is ${minutes(d['left'])} away.`,
    'below-action': (d) =>
      `A(8) ${d['day']} m/s², ${d['points']} points: below the action value of 2.5 m/s². ` +
      `At ${d['next']} m/s² it is ${minutes(d['left'])} away. ` +
      'Below it hands can still be harmed: keep the time short.',
    'check-local': () =>
      'Check today’s rule of your place. The values are of Directive 2002/44/EC (25 June 2002) and Great Britain’s regulations of 6 July 2005. The USA has no federal limit (unchecked), and hands are the same.',
  },
  problems: {
    'over-a-day': (d) => `The times add up to ${d['hours']} hours. A day has 24.`,
  },
};
