import { block } from '../../contract/block.ts';
import { fitLife, ageAtShare, gamma, shapeRange } from '../../chance/index.ts';
import { defineFields } from '../../contract/field.ts';
import { datePattern, dateText, dayInCalendar, dayNumber } from '../../calendar/index.ts';
import { isOver } from '../../thresholds/index.ts';
import { stateOf, type MeterState } from './by-meter.ts';
import { atMeter, daysForHours, dutyInterval, nearestRow, turnAtMeter, whicheverFirst } from './due.ts';
import { greaseInterval, temperatureFactor } from './grease.ts';
import {
  bandOf,
  bestAge,
  bestAgeOfRange,
  costRate,
  flatBand,
  overhaulPeriod,
  rangeLaw,
  rateUnder,
} from './replacement-age.ts';

const hours = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'quantity', dimension: 'time', units: ['h', 'h'], min: 0 }) as const;
const number = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'number', min: 0, above: true, max: 1e9 }) as const;
const factor = <const K extends string>(key: K, label: string) =>
  ({ ...number(key, label), default: 1, max: 1 }) as const;
const day = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'text', pattern: datePattern, patternSays: 'a day written YYYY-MM-DD' }) as const;
const share = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'quantity', dimension: 'ratio', units: ['%', '%'], min: 0 }) as const;
const celsius = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'quantity', dimension: 'temperature', units: ['°C', '°F'], min: -60, max: 300 }) as const;
const problem = (field: string, code: string, data: Readonly<Record<string, string>> = {}) => ({
  problem: { field, code, data },
});

export const blocks = {
  due: block({
    what: 'when a service is due: hours shortened by the duty, or the calendar, whichever comes first',
    source: 'army-tm-service-intervals',
    fields: defineFields([
      { ...hours('base', 'Interval on clean work'), above: true },
      factor('dust', 'Dust'),
      factor('water', 'Water'),
      factor('load', 'Load'),
      { ...share('least', 'Never shorter than this share'), default: 0, max: 100 },
      { ...hours('perWeek', 'Hours run in a week'), above: true },
      {
        key: 'limit',
        label: 'At the latest after',
        kind: 'quantity',
        dimension: 'time',
        units: ['day', 'day'],
        min: 0,
        optional: true,
      },
    ]),
    gives: {
      interval: { label: 'Interval', units: ['h', 'h'] },
      days: { label: 'Days until due' },
      weeks: { label: 'Weeks until due' },
      by: { label: 'Which came first' },
    },
    run: (i) => {
      const interval = dutyInterval(i.base, i, i.least);
      const due = whicheverFirst(
        daysForHours(interval, i.perWeek, 1),
        i.limit === undefined ? undefined : i.limit / 86400,
      );
      return { interval, days: due.days, weeks: due.days / 7, by: due.by };
    },
  }),
  'date-after': block({
    what: 'the day so many days after another',
    source: 'days-from-civil',
    fields: defineFields([
      day('date', 'Day'),
      { key: 'days', label: 'Days', kind: 'count', min: -1000000, max: 1000000 },
    ]),
    gives: { date: { label: 'Day' } },
    run: (i) => {
      const start = dayNumber(i.date);
      if (start === undefined) return problem('date', 'no-such-day', { got: i.date });
      const day = start + i.days;
      return dayInCalendar(day) === day
        ? { date: dateText(day) }
        : problem('days', 'beyond-calendar', { got: String(i.days) });
    },
  }),
  'days-between': block({
    what: 'days from one day to another',
    source: 'days-from-civil',
    fields: defineFields([day('from', 'From'), day('to', 'To')]),
    gives: { days: { label: 'Days' } },
    run: (i) => {
      const [from, to] = [dayNumber(i.from), dayNumber(i.to)];
      if (from === undefined) return problem('from', 'no-such-day', { got: i.from });
      return to === undefined ? problem('to', 'no-such-day', { got: i.to }) : { days: to - from };
    },
  }),
  'at-meter': block({
    what: 'what an hour meter says: how often a service has been due, when it is due next, and whether it is due now',
    source: 'arithmetic',
    fields: defineFields([
      hours('meter', 'Hour meter'),
      { ...hours('interval', 'Due every'), above: true },
      { ...hours('near', 'Counts as due within'), default: 10 },
    ]),
    gives: {
      due: { label: 'Due now' },
      times: { label: 'Times it has been due' },
      last: { label: 'Last due at', units: ['h', 'h'] },
      next: { label: 'Due next at', units: ['h', 'h'] },
    },
    run: (i) => {
      const { due, times, last, next } = atMeter(i.meter, i.interval, i.near);
      return { due: due ? 'yes' : 'no', times, last, next };
    },
  }),
  'due-at-reading': block({
    what: 'at a reading of the hour meter, which services are overdue, due, coming and later',
    source: 'arithmetic',
    fields: defineFields([
      hours('meter', 'Hour meter'),
      {
        key: 'services',
        label: 'Services',
        kind: 'rows',
        minRows: 1,
        maxRows: 200,
        columns: [
          { key: 'name', label: 'What is done', kind: 'text', maxLength: 80 },
          { ...hours('interval', 'Due every'), above: true },
          { ...hours('last', 'Reading when last done'), optional: true },
        ],
      },
      { ...share('near', 'Counts as due within this share of its interval'), default: 10, max: 40 },
      { ...hours('ahead', 'Counts as coming within'), default: 50 },
    ]),
    gives: {
      overdue: { label: 'Overdue' },
      due: { label: 'Due now' },
      coming: { label: 'Coming' },
      later: { label: 'Later' },
    },
    run: (i) => {
      const states = i.services.map((s) => {
        const counted = s.last === undefined;
        const dueAt = counted ? turnAtMeter(i.meter, s.interval, i.near) : s.last + s.interval;
        return { name: s.name, state: stateOf({ ...s, meter: i.meter, dueAt }, i, counted) };
      });
      const named = (state: MeterState) =>
        states
          .filter((s) => s.state === state)
          .map((s) => s.name)
          .join(', ');
      return { overdue: named('overdue'), due: named('due'), coming: named('coming'), later: named('later') };
    },
  }),
  'interval-by-table': block({
    what: 'interval from a printed table of temperatures, by the row nearest to the temperature',
    source: 'army-tm-cartridge-life',
    fields: defineFields([
      {
        key: 'rows',
        label: 'Rows of the table',
        kind: 'rows',
        minRows: 1,
        maxRows: 200,
        columns: [celsius('at', 'At'), { ...hours('interval', 'Hours'), above: true }],
      },
      celsius('temperature', 'Temperature'),
    ]),
    gives: { interval: { label: 'Interval', units: ['h', 'h'] }, row: { label: 'Row used', units: ['°C', '°F'] } },
    run: (i) => {
      const row = nearestRow(i.rows, i.temperature);
      return { interval: row.interval, row: row.at };
    },
  }),
  'replacement-age': block({
    what: 'age at which replacing a part by the clock costs least',
    source: 'barlow-age-replacement',
    fields: defineFields([
      number('shape', 'Weibull shape'),
      number('scale', 'Weibull scale'),
      number('planned', 'Changing it in time'),
      number('failure', 'A failure'),
      { ...number('at', 'Age asked for'), optional: true },
    ]),
    gives: {
      age: { label: 'Age' },
      rate: { label: 'Cost for each unit of time' },
      runToFailure: { label: 'The same, run until it fails' },
      rateAt: { label: 'The same, replaced at the age asked for' },
      saves: { label: 'Saved', units: ['%', '%'] },
      bandLow: { label: 'Within 5 % from' },
      bandHigh: { label: 'Within 5 % to' },
    },
    run: (i) => {
      const life = { shape: i.shape, scale: i.scale };
      const runToFailure = costRate(life, i, Infinity);
      const asked = i.at === undefined ? {} : { rateAt: costRate(life, i, i.at) };
      const age = bestAge(life, i);
      if (age === undefined) return { runToFailure, ...asked };
      const rate = costRate(life, i, age);
      const band = flatBand(life, i, age, 0.05);
      return {
        age,
        rate,
        runToFailure,
        ...asked,
        saves: 1 - rate / runToFailure,
        bandLow: band.low,
        ...(band.high === Infinity ? {} : { bandHigh: band.high }),
      };
    },
  }),
  'replacement-age-of-range': block({
    what: 'the same for a part whose life is known only as a range, and the cost at an age asked for',
    source: 'uniform-law',
    fields: defineFields([
      { key: 'shortest', label: 'Shortest life seen', kind: 'number', min: 0, max: 1e9 },
      number('longest', 'Longest life seen'),
      number('planned', 'Changing it in time'),
      number('failure', 'A failure'),
      { ...number('at', 'Age asked for'), optional: true },
    ]),
    gives: {
      age: { label: 'Age' },
      rate: { label: 'Cost for each unit of time' },
      runToFailure: { label: 'The same, run until it fails' },
      rateAt: { label: 'The same, replaced at the age asked for' },
      failsAt: { label: 'Share that fails before it', units: ['%', '%'] },
      saves: { label: 'Saved', units: ['%', '%'] },
      bandLow: { label: 'Within 5 % from' },
      bandHigh: { label: 'Within 5 % to' },
    },
    run: (i) => {
      if (!isOver(i.longest, i.shortest)) return problem('longest', 'range-empty');
      const law = rangeLaw(i.shortest, i.longest);
      const rateOf = (age: number) => rateUnder(law, i, age);
      const runToFailure = rateOf(Infinity);
      const asked = i.at === undefined ? {} : { rateAt: rateOf(i.at), failsAt: 1 - law.lasts(i.at) };
      const age = bestAgeOfRange(i.shortest, i.longest, i);
      if (age === undefined) return { runToFailure, ...asked };
      const band = bandOf(rateOf, age, law.far, 0.05);
      return {
        age,
        rate: rateOf(age),
        runToFailure,
        ...asked,
        saves: 1 - rateOf(age) / runToFailure,
        bandLow: band.low,
        ...(band.high === Infinity ? {} : { bandHigh: band.high }),
      };
    },
  }),
  'overhaul-period': block({
    what: 'time between overhauls when failures in between are only patched',
    source: 'barlow-age-replacement',
    fields: defineFields([
      number('shape', 'Weibull shape'),
      number('scale', 'Weibull scale'),
      number('overhaul', 'Overhaul'),
      number('patch', 'Patching a failure'),
    ]),
    gives: { period: { label: 'Time between overhauls' }, rate: { label: 'Cost for each unit of time' } },
    run: (i) =>
      overhaulPeriod({ shape: i.shape, scale: i.scale }, i.overhaul, i.patch) ??
      problem('shape', 'not-above', { got: String(i.shape) }),
  }),
  'interval-for-reliability': block({
    what: 'age that a wanted share of parts reaches',
    source: 'weibull-conditional',
    fields: defineFields([
      number('shape', 'Weibull shape'),
      number('scale', 'Weibull scale'),
      {
        key: 'reach',
        label: 'Share that must reach it',
        kind: 'quantity',
        dimension: 'ratio',
        units: ['%', '%'],
        min: 0,
        above: true,
        max: 100,
      },
    ]),
    gives: { age: { label: 'Age' } },
    run: (i) => ({ age: ageAtShare({ shape: i.shape, scale: i.scale }, 1 - i.reach) }),
  }),
  'scale-from-l10': block({
    what: 'Weibull scale and middle life of a bearing from the life nine in ten reach',
    source: 'iso-281-weibull',
    fields: defineFields([
      number('shape', 'Weibull shape'),
      { ...number('l10', 'Life nine in ten reach'), default: 1 },
    ]),
    gives: { scale: { label: 'Scale' }, middle: { label: 'Life half of them reach' }, mean: { label: 'Mean life' } },
    run: (i) => {
      const scale = i.l10 / (-Math.log(0.9)) ** (1 / i.shape);
      return { scale, middle: ageAtShare({ shape: i.shape, scale }, 0.5), mean: scale * gamma(1 + 1 / i.shape) };
    },
  }),
  'fit-records': block({
    what: 'Weibull shape and scale from hours at failure, parts still good counted in',
    source: 'lieblein-zelen-1956',
    fields: defineFields([
      {
        key: 'records',
        label: 'Records',
        kind: 'rows',
        minRows: 2,
        maxRows: 500,
        columns: [number('time', 'Time'), { key: 'failed', label: 'It had failed', kind: 'yes-no', default: true }],
      },
    ]),
    gives: {
      shape: { label: 'Shape' },
      scale: { label: 'Scale' },
      shapeLow: { label: 'Shape, at least (95 %)' },
      shapeHigh: { label: 'Shape, at most (95 %)' },
      failures: { label: 'Failures among the records' },
    },
    run: (i) => {
      const [life, range] = [fitLife(i.records), shapeRange(i.records)];
      if (!life || !range) return problem('records', 'no-fit');
      return { ...life, shapeLow: range.low, shapeHigh: range.high, failures: range.failures };
    },
  }),
  'grease-interval': block({
    what: 'hours between greasings of a bearing with a nipple',
    source: 'relubrication-formula',
    fields: defineFields([
      {
        key: 'rotation',
        label: 'Speed',
        kind: 'quantity',
        dimension: 'rotation',
        units: ['rpm', 'rpm'],
        min: 0,
        above: true,
      },
      { key: 'bore', label: 'Bore', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], min: 0, above: true },
      {
        key: 'bearing',
        label: 'Bearing',
        kind: 'choice',
        default: 'ball',
        options: [
          { value: 'ball', label: 'Deep-groove ball' },
          { value: 'roller', label: 'Cylindrical roller or needle' },
          { value: 'other', label: 'Spherical, tapered or thrust' },
        ],
      },
      factor('temperature', 'Temperature, as a factor'),
      {
        key: 'runsAt',
        label: 'Bearing runs at',
        kind: 'quantity',
        dimension: 'temperature',
        units: ['°C', '°F'],
        min: -40,
        max: 300,
        optional: true,
        help: 'The factor is then taken from it: half for every 15 °C above 55 °C.',
      },
      factor('load', 'Load'),
      factor('surroundings', 'Surroundings'),
    ]),
    gives: { interval: { label: 'Interval', units: ['h', 'h'] }, factor: { label: 'Temperature factor' } },
    run: (i) => {
      const factorNow = i.runsAt === undefined ? i.temperature : temperatureFactor(i.runsAt);
      if (factorNow === undefined) return problem('runsAt', 'too-hot-to-grease');
      const interval = greaseInterval(
        i.rotation,
        i.bore,
        { ball: 10, roller: 5, other: 1 }[i.bearing],
        factorNow,
        i.load,
        i.surroundings,
      );
      return interval > 0 ? { interval, factor: factorNow } : problem('rotation', 'too-fast-to-grease');
    },
  }),
};
