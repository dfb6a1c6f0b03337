/** Limits for carbon monoxide by place, in ppm. */
import type { LimitRow } from './limit-row.ts';

export interface CarbonMonoxideLimit extends LimitRow {
  readonly limit: number;
  /** Over 15 min [ppm]. */
  readonly short?: number;
  /** At no time over [ppm]. */
  readonly ceiling?: number;
}

const eight = '8 h average';

// prettier-ignore
export const carbonMonoxideLimits: readonly CarbonMonoxideLimit[] = [
  { key: 'us-osha', place: 'USA (OSHA)', limit: 50, average: eight, law: '29 CFR 1910.1000, Table Z-1', date: 'as seen', source: 'osha-co', note: '55 mg/m3 in print.' },
  { key: 'us-niosh', place: 'USA, NIOSH (advice)', limit: 35, ceiling: 200, average: '8 to 10 h', law: 'NIOSH REL', date: '1972', source: 'osha-co', note: '1200 ppm: danger to life at once.' },
  { key: 'acgih', place: 'ACGIH (private body)', limit: 25, average: eight, law: 'TLV', date: 'as seen', source: 'osha-co' },
  { key: 'eu', place: 'European Union (least)', limit: 20, short: 100, average: eight, law: '2004/37/EC Annex III, by (EU) 2022/431', date: '16 Mar 2022', source: 'directive-2004-37-ec' },
  { key: 'gb', place: 'Great Britain', limit: 20, short: 100, average: eight, law: 'EH40/2005', date: 'from 2018 on', source: 'eh40-co' },
  { key: 'mx', place: 'Mexico', limit: 25, average: eight, law: 'NOM-010-STPS-2014, Tabla I.1', date: '28 Apr 2014', source: 'nom-010-co' },
  { key: 'cl', place: 'Chile', limit: 44, average: '8 h a day, 45 h a week', law: 'D.S. 594, art. 66', date: '24 Jan 2015', source: 'ds-594-chile' },
  { key: 'es', place: 'Spain', limit: 20, short: 100, average: eight, law: 'RD 665/1997', date: '-', source: 'limits-from-memory' },
  { key: 'au', place: 'Australia', limit: 30, average: eight, law: 'exposure standards list', date: '-', source: 'limits-from-memory' },
  { key: 'br', place: 'Brazil', limit: 39, average: '48 h a week', law: 'NR-15 Anexo 11', date: '1978', source: 'limits-from-memory' },
];
