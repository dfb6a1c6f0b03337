import { block } from '../../contract/block.ts';
import { defineFields } from '../../contract/field.ts';
import {
  axialStiffness,
  deflectionForce,
  spanFrequency,
  stretch,
  tensionFromDeflection,
  tensionFromFrequency,
} from './checks.ts';
import { bending, force, long, mass, span, tension } from './block-fields.ts';

const down = {
  key: 'deflection',
  label: 'Pushed down by',
  kind: 'quantity',
  dimension: 'length',
  units: ['mm', 'in'],
  min: 0,
  above: true,
} as const;
const extra = {
  key: 'extra',
  label: 'Stiffness allowance',
  kind: 'quantity',
  dimension: 'force',
  units: ['N', 'lbf'],
  default: 0,
  min: 0,
} as const;
const weighed = { ...mass, default: undefined, above: true } as const;
const apart = {
  key: 'apart',
  label: 'Distance between the marks',
  kind: 'quantity',
  dimension: 'length',
  units: ['mm', 'in'],
  min: 0,
  above: true,
} as const;

export const checkBlocks = {
  'deflection-force': block({
    what: 'force that pushes the middle of a span down',
    source: 'bloch-geitner-v4',
    fields: defineFields([tension, span, down, extra]),
    gives: { force: { label: 'Force', units: force } },
    run: (i) => ({ force: deflectionForce(i.tension, i.deflection, i.span, i.extra) }),
  }),
  'deflection-window': block({
    what: 'least, greatest and first-fit force at 1/64 of the span, as printed (tension over 16)',
    source: 'bloch-geitner-v4',
    fields: defineFields([tension, extra]),
    gives: {
      least: { label: 'Least force', units: force },
      greatest: { label: 'Greatest force', units: force },
      firstFit: { label: 'Force for a new belt', units: force },
    },
    run: (i) => {
      const greatest = (1.5 * i.tension + i.extra) / 16;
      return { least: (i.tension + i.extra) / 16, greatest, firstFit: 1.33 * greatest };
    },
  }),
  'tension-from-force': block({
    what: 'tension from the force at mid-span',
    source: 'bloch-geitner-v4',
    fields: defineFields([
      { key: 'force', label: 'Force', kind: 'quantity', dimension: 'force', units: ['N', 'lbf'], min: 0 },
      span,
      down,
      extra,
    ]),
    gives: { tension: { label: 'Tension', units: force } },
    run: (i) => ({ tension: tensionFromDeflection(i.force, i.deflection, i.span, i.extra) }),
  }),
  'span-frequency': block({
    what: 'note of a plucked span',
    source: 'blevins-modes',
    fields: defineFields([tension, weighed, span, bending]),
    gives: { frequency: { label: 'Frequency', units: ['Hz', 'Hz'] } },
    run: (i) => ({ frequency: spanFrequency(i.tension, i.mass, i.span, i.bending) }),
  }),
  'tension-from-frequency': block({
    what: 'tension from the note of a plucked span',
    source: 'blevins-modes',
    fields: defineFields([
      { key: 'frequency', label: 'Frequency', kind: 'quantity', dimension: 'frequency', units: ['Hz', 'Hz'], min: 0 },
      weighed,
      span,
      bending,
    ]),
    gives: { tension: { label: 'Tension', units: force } },
    run: (i) => {
      const t = tensionFromFrequency(i.frequency, i.mass, i.span, i.bending);
      return t < 0 ? { problem: { field: 'bending', code: 'stiffer-than-note' } } : { tension: t };
    },
  }),
  stretch: block({
    what: 'how far two marks on a belt move apart',
    source: 'geometry',
    fields: defineFields([
      tension,
      apart,
      {
        key: 'axial',
        label: 'Pull that would double its length',
        kind: 'quantity',
        dimension: 'force',
        units: ['kN', 'lbf'],
        min: 0,
        above: true,
      },
    ]),
    gives: { stretch: { label: 'Marks move apart by', units: long } },
    run: (i) => ({ stretch: stretch(i.tension, i.apart, i.axial) }),
  }),
  'axial-stiffness': block({
    what: 'stretch stiffness of one belt or rib, from a weight hung on the belt',
    source: 'geometry',
    fields: defineFields([
      {
        key: 'force',
        label: 'Pull on the cut belt',
        kind: 'quantity',
        dimension: 'force',
        units: ['N', 'lbf'],
        min: 0,
        above: true,
      },
      apart,
      {
        key: 'growth',
        label: 'The marks moved apart by',
        kind: 'quantity',
        dimension: 'length',
        units: ['mm', 'in'],
        min: 0,
        above: true,
      },
      { key: 'ribs', label: 'Ribs that shared the pull', kind: 'count', default: 1, min: 1 },
    ]),
    gives: { axial: { label: 'Pull that would double the length of one rib', units: ['kN', 'lbf'] } },
    run: (i) => ({ axial: axialStiffness(i.force, i.apart, i.growth) / i.ribs }),
  }),
};
