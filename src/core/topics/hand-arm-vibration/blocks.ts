import { block } from '../../contract/block.ts';
import { defineFields } from '../../contract/field.ts';
import { isOver } from '../../thresholds/index.ts';
import * as e from './exposure.ts';

const vibration = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'quantity', dimension: 'acceleration', units: ['m/s2', 'm/s2'], min: 0, max: 1000 }) as const;
const time = {
  key: 'time',
  label: 'Time',
  kind: 'quantity',
  dimension: 'time',
  units: ['min', 'min'],
  min: 0,
  max: 1440,
} as const;
const shown = (label: string) => ({ label, units: ['m/s2', 'm/s2'] }) as const;
const minutes = (label: string) => ({ label, units: ['min', 'min'] }) as const;

export const blocks = {
  day: block({
    what: 'A(8) and points of several tools',
    source: 'eu-2002-44',
    fields: defineFields([
      { key: 'tools', label: 'Tools', kind: 'rows', minRows: 1, maxRows: 50, columns: [vibration('value', 'a'), time] },
    ]),
    gives: { day: shown('A(8)'), points: { label: 'Points' } },
    run: (i) => ({ day: e.daily(i.tools), points: i.tools.reduce((sum, t) => sum + e.points(t), 0) }),
  }),
  times: block({
    what: 'points an hour of a value, and the time to the action value and to the limit after points already had',
    source: 'hse-vibration-points',
    fields: defineFields([
      { ...vibration('value', 'a'), above: true },
      { key: 'done', label: 'Points had', kind: 'number', default: 0, min: 0, max: 1e6 },
    ]),
    gives: {
      anHour: { label: 'Points an hour' },
      action: minutes('To the action value'),
      limit: minutes('To the limit'),
    },
    run: (i) => ({
      anHour: e.points({ value: i.value, time: 3600 }),
      action: e.timeLeft(i.done, i.value, e.actionPoints),
      limit: e.timeLeft(i.done, i.value, e.limitPoints),
    }),
  }),
  axes: block({
    what: 'one value from three axes, and A(8) for a time',
    source: 'iso-5349-1',
    fields: defineFields([vibration('x', 'x'), vibration('y', 'y'), vibration('z', 'z'), time]),
    gives: { value: shown('a'), day: shown('A(8)') },
    run: (i) => {
      const value = e.totalValue(i.x, i.y, i.z);
      return { value, day: e.partial({ value, time: i.time }) };
    },
  }),
  'two-hands': block({
    what: 'A(8) where each hand has its own value: the higher counts',
    source: 'iso-5349-1',
    fields: defineFields([
      vibration('left', 'Left'),
      { ...time, key: 'leftTime' },
      vibration('right', 'Right'),
      { ...time, key: 'rightTime' },
    ]),
    gives: { day: shown('A(8)') },
    run: (i) => ({
      day: Math.max(e.partial({ value: i.left, time: i.leftTime }), e.partial({ value: i.right, time: i.rightTime })),
    }),
  }),
  declared: block({
    what: 'a declared value with its uncertainty, doubled, and whether a measurement confirms it',
    source: 'hse-oc-246-31',
    fields: defineFields([
      vibration('value', 'a'),
      { ...vibration('uncertainty', 'K'), optional: true },
      { ...vibration('measured', 'Measured'), optional: true },
    ]),
    gives: { upper: shown('a + K'), twice: shown('2 a'), confirmed: { label: 'Confirmed (EN 12096, from memory)' } },
    run: (i) => {
      const upper = e.withUncertainty(i.value, i.uncertainty);
      const base = { upper, twice: e.doubled(i.value) };
      return i.measured === undefined ? base : { ...base, confirmed: isOver(i.measured, upper) ? 'no' : 'yes' };
    },
  }),
  'white-finger': block({
    what: 'years until a tenth of a group shows white fingers; for a group, not for a person',
    source: 'iso-5349-1-annex-c',
    fields: defineFields([{ ...vibration('day', 'A(8)'), above: true }]),
    gives: { years: { label: 'Years', units: ['year', 'year'] } },
    run: (i) => ({ years: e.yearsToWhiteFinger(i.day) }),
  }),
};
