import { datePattern, dayNumber } from '../../calendar/index.ts';
import { block } from '../../contract/block.ts';
import { defineFields } from '../../contract/field.ts';
import {
  brazilDustLimit,
  brazilTotalDustLimit,
  chilePeak,
  chileSilicaLimit,
  dayAverage,
  eightHours,
  filterSeries,
  leastRespirator,
  leftByWater,
  longShiftFactor,
  mixtureIndex,
  mostConcentration,
  silicaLimit,
  silicaLimitOn,
  silicaLimits,
  timeToLimit,
  worstEightHours,
  type SilicaLimit,
} from '../../exposure/index.ts';
import { isOver } from '../../thresholds/index.ts';
import { collectorFlow, controlTable, factorAsked, tasks } from './control-table.ts';

const dust = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'quantity', dimension: 'density', units: ['mg/m3', 'mg/m3'], min: 0 }) as const;
const time = {
  key: 'time',
  label: 'Hours',
  kind: 'quantity',
  dimension: 'time',
  units: ['h', 'h'],
  min: 0,
  max: 24,
} as const;
const mg = (label: string) => ({ label, units: ['mg/m3', 'mg/m3'], decimals: [4, 4] }) as const;
const number = <const K extends string>(key: K, label: string) => ({ key, label, kind: 'number', min: 0 }) as const;
const minutes = (label: string) => ({ label, units: ['min', 'min'] }) as const;
const spells = {
  key: 'spells',
  label: 'Spells',
  kind: 'rows',
  minRows: 1,
  maxRows: 50,
  columns: [dust('concentration', 'In the air'), time],
} as const;

export const blocks = {
  average: block({
    what: 'average over 8 h of several spells, whole and of the worst 8 h',
    source: 'osha-1910-1000-d',
    fields: defineFields([spells]),
    gives: { average: mg('Average'), worst: mg('Worst 8 h') },
    run: (i) => ({ average: dayAverage(i.spells), worst: worstEightHours(i.spells) }),
  }),
  mixture: block({
    what: 'index of a mixture of like effects; over 1 is over the limit',
    source: 'osha-1910-1000-d',
    fields: defineFields([
      {
        key: 'parts',
        label: 'Parts',
        kind: 'rows',
        minRows: 1,
        maxRows: 20,
        columns: [number('concentration', 'In the air'), { ...number('limit', 'Limit'), above: true }],
      },
    ]),
    gives: { index: { label: 'Index' }, over: { label: 'Over' } },
    run: (i) => {
      const index = mixtureIndex(i.parts);
      return { index, over: isOver(index, 1) ? 'yes' : 'no' };
    },
  }),
  'time-to-limit': block({
    what: 'time at a level after which the day’s average stands at the limit',
    source: 'osha-1910-1000-d',
    fields: defineFields([
      dust('concentration', 'In the air'),
      dust('limit', 'Limit'),
      { ...dust('background', 'The rest of the day'), default: 0 },
    ]),
    gives: { time: minutes('Time') },
    run: (i) => {
      const time = timeToLimit(i.concentration, i.limit, i.background);
      return time === Infinity ? {} : { time };
    },
  }),
  'level-for-time': block({
    what: 'level that brings the day’s average to a limit in a time',
    source: 'osha-1910-1000-d',
    fields: defineFields([dust('limit', 'Limit'), { ...time, above: true }]),
    gives: { concentration: mg('Level') },
    run: (i) => ({ concentration: (i.limit * eightHours) / i.time }),
  }),
  'long-shift': block({
    what: 'share of a limit that is left on a long shift, as good practice',
    source: 'brief-scala',
    fields: defineFields([{ ...time, key: 'shift', label: 'Shift' }, dust('limit', 'Limit')]),
    gives: { factor: { label: 'Share' }, limit: mg('Limit') },
    run: (i) => {
      const factor = longShiftFactor(i.shift);
      return { factor, limit: i.limit * factor };
    },
  }),
  'control-table': block({
    what: 'protection factor the US table asks for a task; 0 is none, no figure is a task the table does not list so',
    source: 'osha-1926-1153',
    fields: defineFields([
      {
        key: 'task',
        label: 'Task',
        kind: 'choice',
        options: tasks.map((value) => ({ value, label: controlTable[value].what })),
      },
      {
        key: 'control',
        label: 'Control',
        kind: 'choice',
        options: [
          { value: 'water', label: 'Water' },
          { value: 'extraction', label: 'Extraction' },
          { value: 'none', label: 'None' },
        ],
      },
      {
        key: 'place',
        label: 'Where',
        kind: 'choice',
        options: [
          { value: 'outdoors', label: 'Outdoors' },
          { value: 'enclosed', label: 'Enclosed' },
        ],
      },
      { ...time, key: 'hours', label: 'Hours of all such tasks' },
    ]),
    gives: { factor: { label: 'Factor' }, listed: { label: 'Listed' } },
    run: (i) => {
      const factor = factorAsked(i.task, i.control, i.place, i.hours);
      return factor === undefined ? { listed: 'no' } : { factor, listed: 'yes' };
    },
  }),
  respirator: block({
    what: 'least respirator of a scale for a level and a limit, and what it is good for',
    source: 'osha-1910-134',
    fields: defineFields([
      {
        key: 'scale',
        label: 'Scale',
        kind: 'choice',
        options: [
          { value: 'us', label: 'USA' },
          { value: 'gb', label: 'Great Britain' },
        ],
      },
      dust('concentration', 'In the air'),
      { ...dust('limit', 'Limit'), above: true },
    ]),
    gives: { ratio: { label: 'Times the limit' }, factor: { label: 'Factor' }, most: mg('Good up to') },
    run: (i) => {
      const ratio = i.concentration / i.limit;
      const mask = leastRespirator(i.scale, ratio);
      return mask ? { ratio, factor: mask.factor, most: mostConcentration(mask.factor, i.limit) } : { ratio };
    },
  }),
  filter: block({
    what: 'series of US particle filters that may be worn',
    source: 'niosh-96-101',
    fields: defineFields([
      { key: 'oil', label: 'Oil mist', kind: 'yes-no' },
      { key: 'shifts', label: 'Shifts of 8 h one filter is worn', kind: 'number', min: 0, above: true, max: 1000 },
    ]),
    gives: { series: { label: 'Series' } },
    run: (i) => ({ series: filterSeries(i.oil, i.shifts * eightHours).join(' ') }),
  }),
  'collector-flow': block({
    what: 'least air of a dust collector for a grinder',
    source: 'osha-1926-1153-grinders',
    fields: defineFields([
      { key: 'disc', label: 'Disc', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], min: 0, above: true },
    ]),
    gives: { flow: { label: 'Air', units: ['L/min', 'ft3/min'] } },
    run: (i) => ({ flow: collectorFlow(i.disc) }),
  }),
  'brazil-limit': block({
    what: 'Brazilian limit for dust with quartz in it, and what that is of quartz',
    source: 'nr-15-anexo-12',
    fields: defineFields([
      {
        key: 'quartz',
        label: 'Quartz in the dust',
        kind: 'quantity',
        dimension: 'ratio',
        units: ['%', '%'],
        min: 0,
        max: 100,
      },
    ]),
    gives: { respirable: mg('Respirable dust'), total: mg('Total dust'), quartz: mg('Of quartz') },
    run: (i) => {
      const respirable = brazilDustLimit(i.quartz);
      return { respirable, total: brazilTotalDustLimit(i.quartz), quartz: respirable * i.quartz };
    },
  }),
  limit: block({
    what: 'limit of a place for respirable crystalline silica, today or on the day of a sample',
    source: 'osha-1926-1153',
    fields: defineFields([
      {
        key: 'place',
        label: 'Place',
        kind: 'choice',
        options: silicaLimits.map((r) => ({ value: r.key, label: r.place })),
      },
      {
        key: 'day',
        label: 'Day of the sample',
        kind: 'text',
        pattern: datePattern,
        patternSays: 'a day written YYYY-MM-DD',
        optional: true,
      },
    ]),
    gives: { limit: mg('Limit'), action: mg('Action level'), law: { label: 'Law' }, date: { label: 'Date, as seen' } },
    run: (i) => {
      if (i.day !== undefined && dayNumber(i.day) === undefined)
        return { problem: { field: 'day', code: 'no-such-day', data: { got: i.day } } };
      const row: SilicaLimit = silicaLimit(i.place);
      const limit = silicaLimitOn(i.place, i.day);
      return {
        ...(limit === undefined ? {} : { limit }),
        ...(row.action === undefined ? {} : { action: row.action * 1e-6 }),
        law: row.law,
        date: row.date,
      };
    },
  }),
  'water-trials': block({
    what: 'what is left of the dust with water on, from the best published trial to the worst',
    source: 'shepherd-woskie-2013',
    fields: defineFields([
      {
        key: 'saw',
        label: 'Saw',
        kind: 'choice',
        options: [
          { value: 'hand-held', label: 'Hand-held' },
          { value: 'walk-behind', label: 'Walk-behind' },
        ],
      },
      dust('dry', 'Dust of the dry cut'),
    ]),
    gives: { least: mg('Left at least'), most: mg('Left at most') },
    run: (i) => leftByWater(i.saw, i.dry),
  }),
  'chile-limit': block({
    what: 'Chilean limit for quartz on long days and at height',
    source: 'ds-594-chile',
    fields: defineFields([
      { ...time, key: 'day', label: 'Hours a day', above: true },
      {
        key: 'week',
        label: 'Hours a week',
        kind: 'quantity',
        dimension: 'time',
        units: ['h', 'h'],
        default: 45,
        min: 0,
        max: 168,
      },
      {
        key: 'pressure',
        label: 'Air pressure above 1000 m',
        kind: 'quantity',
        dimension: 'pressure',
        units: ['kPa', 'psi'],
        min: 10,
        max: 110,
        optional: true,
      },
    ]),
    gives: { limit: mg('Limit'), momentary: mg('At no moment over') },
    run: (i) => {
      const limit = chileSilicaLimit(i.day, i.week, i.pressure);
      return { limit, momentary: chilePeak * limit };
    },
  }),
};
