import { block } from '../../contract/block.ts';
import { defineFields } from '../../contract/field.ts';
import { whyRefused, zonePattern } from '../limits-fits/index.ts';
import { recommend } from './recommend.ts';
import { isFor, measuredInterference, ringFit, seatForm } from './seat.ts';

const mm = ['mm', 'in'] as const;
const micro = ['µm', 'thou'] as const;
const seat = {
  key: 'seat',
  label: 'Seat',
  kind: 'choice',
  options: [
    { value: 'shaft', label: 'Shaft' },
    { value: 'housing', label: 'Housing' },
  ],
} as const;
const length = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'quantity', dimension: 'length', units: mm, min: 0, above: true }) as const;
const ringClass = {
  key: 'ringClass',
  label: 'Bearing class',
  kind: 'choice',
  default: 'Normal',
  options: [
    { value: 'Normal', label: 'Normal' },
    { value: 'P6', label: 'P6' },
    { value: 'P5', label: 'P5' },
  ],
} as const;

export const blocks = {
  fit: block({
    what: 'interference of a bearing ring on a seat of a zone',
    source: 'iso-286-1',
    fields: defineFields([
      seat,
      length('size', 'Seat size'),
      { key: 'zone', label: 'Tolerance zone of the seat', kind: 'text', ...zonePattern },
      ringClass,
    ]),
    gives: {
      most: { label: 'Tightest', units: micro },
      mean: { label: 'Mean', units: micro },
      least: { label: 'Loosest', units: micro },
      seatUpper: { label: 'Seat, upper', units: micro },
      seatLower: { label: 'Seat, lower', units: micro },
      ringLower: { label: 'Ring, lower', units: micro },
    },
    run: (i) => {
      const made = ringFit(i.seat, i.size, i.zone, i.ringClass);
      if (made)
        return { ...made.fit, seatUpper: made.seat.upper, seatLower: made.seat.lower, ringLower: made.ring.lower };
      const problem = whyRefused(i.size, i.zone, { size: 'size', zone: 'zone' });
      if (problem) return { problem };
      if (isFor(i.seat, i.zone))
        return { problem: { field: 'size', code: 'ring-outside-table', data: { got: i.size } } };
      return {
        problem: {
          field: 'zone',
          code: i.seat === 'shaft' ? 'zone-of-a-hole' : 'zone-of-a-shaft',
          data: { got: i.zone },
        },
      };
    },
  }),
  recommended: block({
    what: 'recommended zone of a seat from load and housing',
    source: 'abma-7',
    fields: defineFields([
      seat,
      length('size', 'Seat size'),
      {
        key: 'turning',
        label: 'Ring that turns against the load',
        kind: 'choice',
        default: 'inner',
        options: [
          { value: 'inner', label: 'Inner' },
          { value: 'outer', label: 'Outer' },
          { value: 'unclear', label: 'Unclear' },
        ],
      },
      {
        key: 'load',
        label: 'Size of the load',
        kind: 'choice',
        default: 'normal',
        options: [
          { value: 'light', label: 'Light' },
          { value: 'normal', label: 'Normal' },
          { value: 'heavy', label: 'Heavy or shock' },
        ],
      },
      {
        key: 'housing',
        label: 'Kind of housing',
        kind: 'choice',
        default: 'solid',
        options: [
          { value: 'solid', label: 'One piece' },
          { value: 'split', label: 'Split' },
          { value: 'thin', label: 'Thin wall' },
          { value: 'hot-shaft', label: 'Heat through the shaft' },
        ],
      },
      { key: 'slides', label: 'Ring must slide', kind: 'yes-no', default: false },
    ]),
    gives: { zone: { label: 'Zone' }, reason: { label: 'Reason code' } },
    run: (i) => {
      const { zone, reason } = recommend(i);
      return { zone, reason };
    },
  }),
  measured: block({
    what: 'interference, taper and out-of-round from micrometer readings',
    source: 'arithmetic',
    fields: defineFields([
      seat,
      {
        key: 'readings',
        label: 'Readings of the seat',
        kind: 'rows',
        minRows: 1,
        maxRows: 12,
        columns: [length('across', 'Across'), length('quarter', 'A quarter turn round')],
      },
      length('ring', 'Bearing ring, measured'),
    ]),
    gives: {
      mean: { label: 'Mean interference', units: micro },
      least: { label: 'Loosest', units: micro },
      most: { label: 'Tightest', units: micro },
      taper: { label: 'Taper', units: micro },
      outOfRound: { label: 'Out of round', units: micro },
    },
    run: (i) => {
      const form = seatForm(i.readings);
      return {
        ...measuredInterference(i.seat, form, { smallest: i.ring, largest: i.ring }),
        taper: form.taper,
        outOfRound: form.outOfRound,
      };
    },
  }),
};
