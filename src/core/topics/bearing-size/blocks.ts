import { block } from '../../contract/block.ts';
import { defineFields } from '../../contract/field.ts';
import { matches } from './find.ts';
import { numberPattern, readNumber } from './number.ts';
import { clearanceLimits, ringLimits } from './ring.ts';

const mm = ['mm', 'in'] as const;
const micro = ['µm', 'thou'] as const;
const diameter = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'quantity', dimension: 'length', units: mm, min: 0, above: true }) as const;
const ringClass = {
  key: 'ringClass',
  label: 'Tolerance class',
  kind: 'choice',
  default: 'Normal',
  options: [
    { value: 'Normal', label: 'Normal' },
    { value: 'P6', label: 'P6' },
    { value: 'P5', label: 'P5' },
  ],
} as const;
const group = {
  key: 'group',
  label: 'Clearance group',
  kind: 'choice',
  default: 'CN',
  options: [
    { value: 'C2', label: 'C2' },
    { value: 'CN', label: 'CN' },
    { value: 'C3', label: 'C3' },
    { value: 'C4', label: 'C4' },
  ],
} as const;

export const blocks = {
  dimensions: block({
    what: 'boundary dimensions of a designation',
    source: 'iso-15',
    fields: defineFields([
      {
        key: 'designation',
        label: 'Number on the ring',
        kind: 'text',
        ...numberPattern,
      },
    ]),
    gives: {
      bore: { label: 'Bore', units: mm },
      outside: { label: 'Outside diameter', units: mm },
      width: { label: 'Width', units: mm },
    },
    run: (i) => {
      const b = readNumber(i.designation)?.bearing;
      return b
        ? { bore: b.bore, outside: b.outside, width: b.width }
        : { problem: { field: 'designation', code: 'no-such-bearing', data: { got: i.designation } } };
    },
  }),
  find: block({
    what: 'the bearing nearest three caliper readings',
    source: 'iso-15',
    fields: defineFields([
      diameter('bore', 'Bore'),
      diameter('outside', 'Outside diameter'),
      diameter('width', 'Width'),
      { ...diameter('allow', 'Difference accepted'), default: 0.3 },
    ]),
    gives: {
      designation: { label: 'Bearing' },
      worst: { label: 'Largest difference', units: mm },
      count: { label: 'How many fit' },
    },
    run: (i) => {
      const found = matches(i, i.allow);
      const best = found[0];
      return best ? { designation: best.bearing.designation, worst: best.worst, count: found.length } : { count: 0 };
    },
  }),
  'ring-limits': block({
    what: 'lower limit of the mean bore or outside diameter of a class',
    source: 'iso-492',
    fields: defineFields([
      {
        key: 'side',
        label: 'Which diameter',
        kind: 'choice',
        options: [
          { value: 'bore', label: 'Bore' },
          { value: 'outside', label: 'Outside diameter' },
        ],
      },
      diameter('size', 'Nominal diameter'),
      ringClass,
    ]),
    gives: {
      upper: { label: 'Upper deviation', units: micro },
      lower: { label: 'Lower deviation', units: micro },
      source: { label: 'Source' },
    },
    run: (i) => {
      const limits = ringLimits(i.side, i.size, i.ringClass);
      return limits ? { ...limits } : { problem: { field: 'size', code: 'ring-outside-table', data: { got: i.size } } };
    },
  }),
  clearance: block({
    what: 'radial internal clearance of a new deep-groove bearing',
    source: 'iso-5753-1',
    fields: defineFields([diameter('bore', 'Bore'), group]),
    gives: {
      least: { label: 'Least clearance', units: micro },
      most: { label: 'Most clearance', units: micro },
      source: { label: 'Source' },
    },
    run: (i) => {
      const limits = clearanceLimits(i.bore, i.group);
      return limits ? { ...limits } : { problem: { field: 'bore', code: 'ring-outside-table', data: { got: i.bore } } };
    },
  }),
};
