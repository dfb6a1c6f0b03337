/** Values for hand-arm vibration by place, A(8) in m/s2. */
import type { LimitRow } from './limit-row.ts';

export interface VibrationLimit extends LimitRow {
  /** undefined: the place has no limit, which is not the same as none being needed. */
  readonly limit: number | undefined;
  readonly action?: number;
}

const eight = '8 h, A(8)';

// prettier-ignore
export const vibrationLimits: readonly VibrationLimit[] = [
  { key: 'eu', place: 'European Union', limit: 5, action: 2.5, average: eight, law: 'Directive 2002/44/EC, art. 3', date: '25 Jun 2002', source: 'eu-2002-44' },
  { key: 'gb', place: 'Great Britain', limit: 5, action: 2.5, average: eight, law: 'Control of Vibration at Work Regulations 2005', date: '6 Jul 2005', source: 'hse-vibration-points', note: '100 and 400 points a day.' },
  { key: 'es', place: 'Spain', limit: 5, action: 2.5, average: eight, law: 'RD 1311/2005', date: '2005', source: 'limits-from-memory' },
  { key: 'us', place: 'USA (federal)', limit: undefined, average: '-', law: 'none', date: '-', source: 'limits-from-memory', note: 'No federal limit. Hands are the same.' },
  { key: 'acgih', place: 'ACGIH (private body)', limit: 5, average: eight, law: 'TLV, hand-arm vibration', date: 'since about 2018', source: 'limits-from-memory' },
];
