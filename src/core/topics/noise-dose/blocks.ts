import { block } from '../../contract/block.ts';
import { defineFields } from '../../contract/field.ts';
import { brazilNoiseTime } from '../../exposure/index.ts';
import { distanceFor, levelAt } from './distance.ts';
import {
  allowedTime,
  dailyLevel,
  dose,
  niosh,
  nioshAverage,
  noisePoints,
  osha,
  oshaLimit,
  oshaActionLevel,
  oshaAverage,
  timeLeftToLevel,
  energy,
  weeklyLevel,
} from './dose.ts';
import { tableDose, tableEnd } from './osha-table.ts';
import * as p from './protectors.ts';

const level = { key: 'level', label: 'Level, dB(A)', kind: 'number', min: 0, max: 200 } as const;
const time = {
  key: 'time',
  label: 'Time',
  kind: 'quantity',
  dimension: 'time',
  units: ['min', 'min'],
  min: 0,
} as const;
const periods = {
  key: 'periods',
  label: 'The day',
  kind: 'rows',
  minRows: 1,
  maxRows: 50,
  columns: [level, time],
} as const;
/** The printed tables end at a level; above it there is no time at all. */
const levelTo = (max: number) => ({ ...level, max });
const periodsTo = (max: number) => ({ ...periods, columns: [levelTo(max), time] }) as const;
const brazilEnd = 115;
const db = { label: 'dB(A)' } as const;
const number = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'number', min: -200, max: 200 }) as const;
const minutes = (label: string) => ({ label, units: ['min', 'min'] }) as const;
const finite = <K extends string>(key: K, value: number | undefined) =>
  value === undefined || value === Infinity ? {} : ({ [key]: value } as Record<K, number>);

export const blocks = {
  'allowed-time': block({
    what: 'time a day at a level, by OSHA, by NIOSH and by any other criterion and exchange',
    source: 'osha-1910-95',
    fields: defineFields([
      level,
      { key: 'criterion', label: 'Level of a whole day', kind: 'number', default: 85, min: 50, max: 120 },
      { key: 'exchange', label: 'dB for half the time', kind: 'number', default: 3, min: 1, max: 10 },
    ]),
    gives: { osha: minutes('OSHA'), niosh: minutes('NIOSH'), other: minutes('By the criterion given') },
    run: (i) => ({
      ...finite('osha', allowedTime(i.level, osha)),
      ...finite('niosh', allowedTime(i.level, niosh)),
      ...finite('other', allowedTime(i.level, { criterion: i.criterion, exchange: i.exchange, threshold: 0 })),
    }),
  }),
  'brazil-time': block({
    what: 'time a day at a level by the Brazilian table',
    source: 'nr-15-anexo-1',
    fields: defineFields([levelTo(brazilEnd)]),
    gives: { time: minutes('Time') },
    run: (i) => finite('time', brazilNoiseTime(i.level) ?? 0),
  }),
  'brazil-sum': block({
    what: 'sum of time over time allowed by the Brazilian table; 1 is the whole day',
    source: 'nr-15-anexo-1',
    fields: defineFields([periodsTo(brazilEnd)]),
    gives: { sum: { label: 'Sum' } },
    run: (i) => {
      const times = i.periods.map((one) => brazilNoiseTime(one.level));
      return { sum: i.periods.reduce((sum, one, k) => sum + one.time / (times[k] ?? 0), 0) };
    },
  }),
  doses: block({
    what: 'dose and average of a day by all three rules, bare ears',
    source: 'osha-1910-95',
    fields: defineFields([periods]),
    gives: {
      oshaDose: { label: 'OSHA dose', units: ['%', '%'] },
      oshaTwa: db,
      oshaLimitDose: { label: 'OSHA dose of levels from 90 up', units: ['%', '%'] },
      nioshDose: { label: 'NIOSH dose', units: ['%', '%'] },
      nioshTwa: db,
      lex: db,
      points: { label: 'Points' },
    },
    run: (i) => {
      const [o, n, l] = [dose(i.periods, osha), dose(i.periods, niosh), dailyLevel(i.periods)];
      return {
        oshaDose: o,
        oshaLimitDose: dose(i.periods, oshaLimit),
        nioshDose: n,
        ...finite('oshaTwa', oshaAverage(o)),
        ...finite('nioshTwa', nioshAverage(n)),
        ...finite('lex', l),
        ...finite('points', l === undefined ? undefined : noisePoints(l)),
      };
    },
  }),
  'osha-table': block({
    what: 'dose and average of a day by OSHA’s printed table, levels rounded up to the next whole decibel',
    source: 'osha-1910-95',
    fields: defineFields([periodsTo(tableEnd)]),
    gives: { dose: { label: 'Dose', units: ['%', '%'] }, twa: db },
    run: (i) => {
      const sum = tableDose(i.periods) ?? Infinity;
      return { dose: sum, ...finite('twa', oshaAverage(sum)) };
    },
  }),
  'osha-twa': block({
    what: 'OSHA average for a dose',
    source: 'osha-1910-95',
    fields: defineFields([
      { key: 'dose', label: 'Dose', kind: 'quantity', dimension: 'ratio', units: ['%', '%'], min: 0, above: true },
    ]),
    gives: { twa: db },
    run: (i) => finite('twa', oshaAverage(i.dose)),
  }),
  'osha-action-level': block({
    what: 'OSHA action level for a shift of other than 8 h',
    source: 'osha-1910-95',
    fields: defineFields([
      {
        key: 'shift',
        label: 'Shift',
        kind: 'quantity',
        dimension: 'time',
        units: ['h', 'h'],
        min: 0,
        above: true,
        max: 24,
      },
    ]),
    gives: { level: db },
    run: (i) => ({ level: oshaActionLevel(i.shift) }),
  }),
  week: block({
    what: 'level and points of a week from the levels of its days',
    source: 'hse-weekly-noise',
    fields: defineFields([{ key: 'days', label: 'Days', kind: 'rows', minRows: 1, maxRows: 7, columns: [level] }]),
    gives: { level: db, points: { label: 'Points' } },
    run: (i) => ({
      level: weeklyLevel(i.days.map((d) => d.level)),
      points: i.days.reduce((sum, d) => sum + noisePoints(d.level), 0),
    }),
  }),
  'points-level': block({
    what: 'a week’s level from its points',
    source: 'hse-weekly-noise',
    fields: defineFields([{ key: 'points', label: 'Points', kind: 'number', min: 0, above: true, max: 1e9 }]),
    gives: { level: db },
    run: (i) => ({ level: 85 + 10 * Math.log10(i.points / 500) }),
  }),
  'left-to-level': block({
    what: 'time left at a level before the daily level stands at a limit',
    source: 'directive-2003-10-ec',
    fields: defineFields([periods, number('next', 'Next level'), number('limit', 'Limit')]),
    gives: { time: minutes('Left') },
    run: (i) => ({ time: timeLeftToLevel(energy(i.periods), i.next, i.limit) }),
  }),
  nrr: block({
    what: 'level at the ear under protectors with an NRR, by each rule',
    source: 'osha-nrr-field',
    fields: defineFields([
      number('level', 'Level'),
      number('nrr', 'NRR'),
      { ...number('second', 'NRR of the other one'), default: 0 },
    ]),
    gives: {
      half: db,
      halfC: db,
      label: db,
      dual: db,
      muff: db,
      foam: db,
      other: db,
      muffC: db,
      foamC: db,
      otherC: db,
    },
    run: ({ level: l, nrr, second }) => {
      const under = (reduction: number) => l - p.credited(reduction);
      return {
        half: under(p.fieldReduction(nrr)),
        halfC: under(p.fieldReductionC(nrr)),
        label: under(p.labelReduction(nrr)),
        dual: under(p.dualReduction(nrr, second)),
        muff: under(p.nioshReduction(nrr, 'muff')),
        foam: under(p.nioshReduction(nrr, 'foam')),
        other: under(p.nioshReduction(nrr, 'other')),
        muffC: under(p.nioshShare.muff * nrr),
        foamC: under(p.nioshShare.foam * nrr),
        otherC: under(p.nioshShare.other * nrr),
      };
    },
  }),
  snr: block({
    what: 'level at the ear from a level in dB(C) and an SNR, as printed and with 4 dB for real use',
    source: 'hse-protectors',
    fields: defineFields([number('levelC', 'Level, dB(C)'), number('snr', 'SNR')]),
    gives: { ear: db, real: db },
    run: (i) => ({ ear: i.levelC - i.snr, real: i.levelC - i.snr + p.realUse }),
  }),
  hml: block({
    what: 'level at the ear by H, M and L, as printed and with 4 dB for real use',
    source: 'hse-protectors',
    fields: defineFields([
      number('levelA', 'Level, dB(A)'),
      number('levelC', 'Level, dB(C)'),
      number('high', 'H'),
      number('middle', 'M'),
      number('low', 'L'),
    ]),
    gives: { reduction: { label: 'Reduction' }, ear: db, real: db },
    run: (i) => {
      const reduction = p.hmlReduction(i.high, i.middle, i.low, i.levelC - i.levelA);
      return { reduction, ear: i.levelA - reduction, real: i.levelA - reduction + p.realUse };
    },
  }),
  bands: block({
    what: 'levels of octave bands added up',
    source: 'hse-protectors',
    fields: defineFields([{ key: 'bands', label: 'Bands', kind: 'rows', minRows: 1, maxRows: 12, columns: [level] }]),
    gives: { total: db, real: db },
    run: (i) => {
      const total = p.bandSum(i.bands.map((b) => b.level));
      return { total, real: total + p.realUse };
    },
  }),
  distance: block({
    what: 'level at a distance outdoors, and the distance for 85 dB(A)',
    source: 'inverse-square',
    fields: defineFields([
      level,
      { key: 'from', label: 'Read at', kind: 'quantity', dimension: 'length', units: ['m', 'ft'], min: 0, above: true },
      { key: 'to', label: 'Wanted at', kind: 'quantity', dimension: 'length', units: ['m', 'ft'], min: 0, above: true },
    ]),
    gives: { level: db, for85: { label: 'Below 85 dB(A) from', units: ['m', 'ft'] } },
    run: (i) => ({ level: levelAt(i.level, i.from, i.to), for85: distanceFor(i.level, i.from, 85) }),
  }),
};
