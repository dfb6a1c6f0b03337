import type { Boundaries } from './row.ts';

/** One tool on bare ears, so that a level over 8 h is the day's own. */
const bare = (level: number, hours: number) => ({
  periods: [{ what: 'floor saw', level, time: hours * 60, worn: false }],
  next: 100,
  protector: 'none',
});
/** Under a protector counted for exactly 10 dB, (27 - 7) / 2, for a minute: the level is what counts. */
const worn = (level: number, more: object = {}) => ({
  periods: [{ what: 'ring saw', level, time: 1, worn: true }],
  next: 100,
  protector: 'nrr',
  nrr: 27,
  derating: 'half',
  ...more,
});
const level = 'periods.1.level';
const time = 'periods.1.time';

export const boundaries: Boundaries = {
  rows: [
    {
      why: 'NIOSH: 88 dB(A) may last 4 h',
      verdict: 'niosh',
      inputs: bare(88, 4),
      moves: time,
      at: 240,
      gives: ['niosh-within', 'niosh-within', 'niosh-over'],
    },
    {
      why: 'OSHA: 95 dB(A) for 2 h is half the dose, the action level',
      verdict: 'osha',
      inputs: bare(95, 2),
      moves: time,
      at: 120,
      gives: ['osha-below', 'osha-action', 'osha-action'],
    },
    {
      why: 'OSHA: 95 dB(A) may last 4 h',
      verdict: 'osha',
      inputs: bare(95, 4),
      moves: time,
      at: 240,
      gives: ['osha-action', 'osha-action', 'osha-over'],
    },
    {
      why: 'OSHA: 89 dB(A) may last 8 h x 2^(1/5) counting levels from 80 up; for the limit itself it does not count',
      verdict: 'osha',
      inputs: bare(89, 9),
      moves: time,
      at: 480 * 2 ** 0.2,
      gives: ['osha-action', 'osha-action', 'osha-over-in-all'],
    },
    {
      why: 'OSHA: 4 h at 95 dB(A) are the whole limit; 85 dB(A) count for the average alone (Middendorf 1983)',
      verdict: 'osha',
      inputs: { ...bare(95, 4), periods: [...bare(95, 4).periods, ...bare(85, 4).periods] },
      moves: time,
      at: 240,
      gives: ['osha-over-in-all', 'osha-over-in-all', 'osha-over'],
    },
    {
      why: 'lower action value, 80 dB(A) over 8 h, counts at or above (2003/10/EC)',
      verdict: 'europe',
      inputs: bare(80, 8),
      moves: level,
      at: 80,
      gives: ['eu-below', 'eu-lower', 'eu-lower'],
    },
    {
      why: 'upper action value, 85 dB(A) over 8 h, counts at or above (2003/10/EC)',
      verdict: 'europe',
      inputs: bare(85, 8),
      moves: level,
      at: 85,
      gives: ['eu-lower', 'eu-upper', 'eu-upper'],
    },
    {
      why: 'limit, 87 dB(A) over 8 h at the ear, is passed above (2003/10/EC)',
      verdict: 'europe',
      inputs: bare(87, 8),
      moves: level,
      at: 87,
      gives: ['eu-upper', 'eu-upper', 'eu-over-limit'],
    },
    {
      why: 'less than 70 dB(A) at the ear is too little to hear a shout (HSE): 80 - 10',
      verdict: 'protectors',
      inputs: worn(80),
      moves: level,
      at: 80,
      gives: ['ear-deaf', 'ear-good', 'ear-good'],
    },
    {
      why: 'the aim ends at 80 dB(A) at the ear (HSE): 90 - 10',
      verdict: 'protectors',
      inputs: worn(90),
      moves: level,
      at: 90,
      gives: ['ear-good', 'ear-good', 'ear-short'],
    },
    {
      why: 'over 85 dB(A) at the ear, NIOSH’s own level, is a stop: 95 - 10',
      verdict: 'protectors',
      inputs: worn(95),
      moves: level,
      at: 95,
      gives: ['ear-short', 'ear-short', 'ear-loud'],
    },
    {
      why: 'an NRR of 7 leaves nothing: (7 - 7) / 2',
      verdict: 'protectors',
      inputs: worn(82),
      moves: 'nrr',
      at: 7,
      gives: ['ear-nothing', 'ear-nothing', 'ear-short'],
    },
    {
      why: 'OSHA’s ceiling for steady noise, 115 dB(A) (Table G-16)',
      verdict: 'ceiling',
      inputs: bare(115, 0.01),
      moves: level,
      at: 115,
      gives: [undefined, undefined, 'over-115'],
    },
  ],
  noThreshold: { 'check-local': 'always said' },
};
