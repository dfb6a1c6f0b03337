/** Limits for respirable crystalline silica by place. Figures in mg/m3; each row names the law and how it was seen. */
import { isOver } from '../thresholds/index.ts';
import type { LimitRow } from './limit-row.ts';

export interface SilicaLimit extends LimitRow {
  /** [mg/m3]; undefined where the rule is a formula. */
  readonly limit: number | undefined;
  /** Counts at or above [mg/m3]. */
  readonly action?: number;
  /** For cristobalite and tridymite, where it differs [mg/m3]. */
  readonly cristobalite?: number;
  readonly law: string;
  /** What held before the limit of today, up to and with a day [YYYY-MM-DD, mg/m3]. */
  readonly before?: { readonly until: string; readonly limit: number };
}

const eight = '8 h average';

// prettier-ignore
export const silicaLimits = [
  { key: 'us-general', place: 'USA, general industry (a shop)', limit: 0.05, action: 0.025, average: eight, law: '29 CFR 1910.1053(c)', date: '25 Mar 2016', source: 'osha-1910-1053' },
  { key: 'us-construction', place: 'USA, construction', limit: 0.05, action: 0.025, average: eight, law: '29 CFR 1926.1153(d)(1)', date: '25 Mar 2016', source: 'osha-1926-1153' },
  { key: 'us-niosh', place: 'USA, NIOSH (advice)', limit: 0.05, average: 'up to 10 h a day, 40 h a week', law: 'NIOSH REL', date: '1974, restated 2008', source: 'niosh-silica-rel' },
  { key: 'acgih', place: 'ACGIH (private body)', limit: 0.025, average: eight, law: 'TLV, quartz and cristobalite', date: '2011 list', source: 'acgih-silica' },
  { key: 'gb', place: 'Great Britain', limit: 0.1, average: eight, law: 'COSHH 2002; EH40/2005', date: 'since 2006', source: 'eh40' },
  { key: 'eu', place: 'European Union (least)', limit: 0.1, average: eight, law: '2004/37/EC Annex III, by (EU) 2017/2398', date: '12 Dec 2017', source: 'directive-2004-37-ec', note: 'Sum of all forms. Each country may ask for less.' },
  { key: 'es', place: 'Spain', limit: 0.05, average: '8 h (VLA-ED)', law: 'RD 665/1997, Anexo III', date: 'since 1 Jan 2022; 0.1 before', before: { until: '2021-12-31', limit: 0.1 }, source: 'rd-665-1997' },
  { key: 'fr', place: 'France', limit: 0.1, cristobalite: 0.05, average: '8 h (VLEP)', law: 'Code du travail R.4412-149', date: 'as of July 2022', source: 'inrs-ft-232', note: 'And an index for mixtures, R.4412-154.' },
  { key: 'de', place: 'Germany', limit: 0.05, average: 'a shift', law: 'TRGS 559, value for assessment', date: '1 Apr 2020', source: 'trgs-559', note: 'Not a limit of the list. Respirable dust 1.25, inhalable 10.' },
  { key: 'ca-on', place: 'Canada, Ontario', limit: 0.1, cristobalite: 0.05, average: '8 h a day, 40 h a week', law: 'O. Reg. 490/09, Table 1', date: 'guide of 2020', source: 'o-reg-490-09' },
  { key: 'ca-qc', place: 'Canada, Quebec', limit: 0.05, average: eight, law: 'RROHS', date: 'since 28 Apr 2024; 0.1 before', before: { until: '2024-04-27', limit: 0.1 }, source: 'rrohs-quebec' },
  { key: 'ca-west', place: 'Canada, BC, AB, MB, NS, NL, PE, federal', limit: 0.025, average: eight, law: 'provincial rules, many by the ACGIH value', date: 'table of about 2011 to 2013', source: 'canada-provinces-silica' },
  { key: 'ca-sk', place: 'Canada, Saskatchewan', limit: 0.05, average: eight, law: 'OHS Regulations', date: 'table of about 2011 to 2013', source: 'canada-provinces-silica' },
  { key: 'mx', place: 'Mexico', limit: 0.025, average: '8 h a day, 40 h a week', law: 'NOM-010-STPS-2014, Tabla I.1', date: '28 Apr 2014', source: 'limits-from-memory' },
  { key: 'au', place: 'Australia', limit: 0.05, average: eight, law: 'WHS Regulations, exposure standards', date: 'since 1 Jul 2020; 0.1 before', before: { until: '2020-06-30', limit: 0.1 }, source: 'safe-work-australia-silica' },
  { key: 'nz', place: 'New Zealand (advice)', limit: 0.025, average: '8 h, five shifts a week', law: 'WorkSafe exposure standard', date: '2023; 0.05 from Nov 2019', source: 'mbie-nz-silica' },
  { key: 'br', place: 'Brazil', limit: undefined, average: 'working day', law: 'NR-15 Anexo 12', date: '1978', source: 'nr-15-anexo-12', note: '8/(Q + 2) mg/m3 of respirable dust, Q the per cent of quartz in it: never over 0.08 of quartz.' },
  { key: 'cl', place: 'Chile', limit: 0.08, cristobalite: 0.04, average: '8 h a day, 45 h a week', law: 'D.S. 594, art. 66', date: '24 Jan 2015', source: 'ds-594-chile', note: 'Less for longer days and above 1000 m.' },
  { key: 'za', place: 'South Africa (not mines)', limit: 0.1, average: eight, law: 'GN R.683, Table 1', date: '27 Jun 2008; new rules of 29 Mar 2021 not read', source: 'gn-r683-za' },
] as const satisfies readonly SilicaLimit[];

export type SilicaPlace = (typeof silicaLimits)[number]['key'];

/** The limit on respirable silica of a place [kg/m3], with its source. @throws Error for a place not in the table. */
export function silicaLimit(key: SilicaPlace): SilicaLimit {
  const row = silicaLimits.find((l) => l.key === key);
  if (!row) throw new Error(`There is no silica limit for "${key}".`);
  return row;
}

/**
 * The limit that held in a place on a day, for samples taken before a change [kg/m3].
 * @param day YYYY-MM-DD; undefined for today's @returns undefined where the rule is a formula
 * Example: es, 2021-12-31 -> 0.1 mg/m3; 2022-01-01 -> 0.05. Source: rd-665-1997.
 */
export function silicaLimitOn(key: SilicaPlace, day?: string): number | undefined {
  const { limit, before }: SilicaLimit = silicaLimit(key);
  const held = day !== undefined && before !== undefined && day <= before.until ? before.limit : limit;
  return held === undefined ? undefined : held * 1e-6;
}

/**
 * Brazil: limit for respirable dust that holds quartz. Formula: L = 8 / (Q + 2).
 * @param quartz Q [1], share of quartz, 0 to 1 @returns L [kg/m3] of respirable dust
 * Example: 5 % -> 1.143 mg/m3. Source: nr-15-anexo-12.
 */
export function brazilDustLimit(quartz: number): number {
  return 8e-6 / (100 * quartz + 2);
}

/** Brazil: the same for total dust. Formula: L = 24 / (Q + 3) [kg/m3]. Example: 5 % -> 3 mg/m3. Source: nr-15-anexo-12. */
export function brazilTotalDustLimit(quartz: number): number {
  return 24e-6 / (100 * quartz + 3);
}

/** Chile: a momentary level is never over five times the limit. Source: ds-594-chile. */
export const chilePeak = 5;

/**
 * Chile: limit corrected for long days and for height.
 * Formula: L = 0.08 F_j F_a; F_j = (8/h)((24 - h)/16) over 8 h a day, 0.90 for 8 h days with 45 to 48 h a week;
 * F_a = P / 760 mmHg above 1000 m. Both factors to two decimals.
 * @param hours h [s] a day @param week [s] a week @param pressure P [Pa]; undefined up to 1000 m
 * @returns L [kg/m3] of quartz
 * Example: 12 h, 560 mmHg -> 0.0296 mg/m3. Source: ds-594-chile.
 */
export function chileSilicaLimit(hours: number, week: number, pressure?: number): number {
  const h = hours / 3600;
  const day = isOver(h, 8) ? (8 / h) * ((24 - h) / 16) : isOver(week / 3600, 45) ? 0.9 : 1;
  const height = pressure === undefined ? 1 : pressure / 101325;
  const two = (n: number) => Math.round(n * 100 + 1e-9) / 100;
  return 0.08e-6 * two(day) * two(height);
}
