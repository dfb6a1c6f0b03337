/** Limits for noise by place, in dB(A) over 8 h. */
import { isOver, isUnder } from '../thresholds/index.ts';
import type { LimitRow } from './limit-row.ts';

export interface NoiseLimit extends LimitRow {
  readonly limit: number;
  /** dB by which the level may rise when the time is halved. */
  readonly exchange?: number;
  /** Value or values from which something must be done. */
  readonly action?: readonly number[];
  /** Peak, dB(C) where the law says so. */
  readonly peak?: readonly number[];
  /** Never without protectors above this. */
  readonly never?: number;
}

const eight = '8 h';

// prettier-ignore
export const noiseLimitList: readonly NoiseLimit[] = [
  { key: 'us-osha', place: 'USA (OSHA)', limit: 90, action: [85], exchange: 5, peak: [140], average: eight, law: '29 CFR 1910.95', date: 'as seen', source: 'osha-1910-95' },
  { key: 'us-niosh', place: 'USA, NIOSH (advice)', limit: 85, exchange: 3, average: eight, law: 'NIOSH 98-126', date: 'June 1998', source: 'niosh-98-126' },
  { key: 'eu', place: 'European Union', limit: 87, action: [85, 80], exchange: 3, peak: [140, 137, 135], average: eight, law: 'Directive 2003/10/EC, art. 3', date: '6 Feb 2003', source: 'directive-2003-10-ec', note: 'Protectors count for the 87 alone.' },
  { key: 'gb', place: 'Great Britain', limit: 87, action: [85, 80], exchange: 3, peak: [140, 137, 135], average: eight, law: 'Control of Noise at Work Regulations 2005, reg. 4', date: '2005', source: 'noise-regs-gb-2005', note: 'Protectors count for the 87 alone.' },
  { key: 'es', place: 'Spain', limit: 87, action: [85, 80], exchange: 3, peak: [140, 137, 135], average: eight, law: 'RD 286/2006, art. 5', date: '11 Mar 2006', source: 'rd-286-2006' },
  { key: 'mx', place: 'Mexico', limit: 90, action: [85, 80], exchange: 3, never: 105, average: eight, law: 'NOM-011-STPS-2001, Apéndice A', date: '17 Apr 2002', source: 'nom-011-stps-2001' },
  { key: 'br', place: 'Brazil', limit: 85, exchange: 5, never: 115, average: eight, law: 'NR-15 Anexo 1', date: '1978', source: 'nr-15-anexo-1', note: 'A table, rounded; a level between two rows takes the higher.' },
  { key: 'au', place: 'Australia', limit: 85, exchange: 3, peak: [140], average: eight, law: 'model WHS Regulations, reg. 56', date: 'as seen', source: 'whs-reg-56' },
  { key: 'cl', place: 'Chile', limit: 85, exchange: 3, action: [82], never: 115, average: eight, law: 'D.S. 594, arts. 74 to 77', date: '1999, as amended', source: 'ds-594-chile', note: 'Levels below 80 are not counted.' },
  { key: 'de', place: 'Germany', limit: 85, action: [80], exchange: 3, average: eight, law: 'LärmVibrationsArbSchV', date: '2007', source: 'limits-from-memory' },
  { key: 'fr', place: 'France', limit: 87, action: [85, 80], exchange: 3, average: eight, law: 'Code du travail R.4431-2', date: '2006', source: 'limits-from-memory' },
  { key: 'ca-on', place: 'Canada, Ontario', limit: 85, exchange: 3, average: eight, law: 'O. Reg. 381/15', date: '2016', source: 'limits-from-memory' },
  { key: 'nz', place: 'New Zealand', limit: 85, exchange: 3, peak: [140], average: eight, law: 'HSE Regulations 1995, reg. 11', date: '1995', source: 'limits-from-memory' },
];

/** Brazil, NR-15 Anexo 1: minutes a day by level [dB(A)]. Source: nr-15-anexo-1. */
// prettier-ignore
export const brazilNoiseMinutes: readonly (readonly [level: number, minutes: number])[] = [
  [85, 480], [86, 420], [87, 360], [88, 300], [89, 270], [90, 240], [91, 210], [92, 180], [93, 160], [94, 135], [95, 120], [96, 105],
  [98, 75], [100, 60], [102, 45], [104, 35], [105, 30], [106, 25], [108, 20], [110, 15], [112, 10], [114, 8], [115, 7],
];

/**
 * Brazil: time a day at a level; a level between two rows takes the next higher one.
 * @param level [dB(A)] @returns time [s]; undefined over 115, where the table ends, Infinity below 85, where it begins
 * Example: 97 -> 75 min. Source: nr-15-anexo-1.
 */
export function brazilNoiseTime(level: number): number | undefined {
  if (isUnder(level, 85)) return Infinity;
  const row = brazilNoiseMinutes.find(([l]) => !isOver(level, l));
  return row && row[1] * 60;
}
