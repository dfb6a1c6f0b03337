/** Small sums of the leak test and the top end, callable by themselves. */
import { block } from '../../contract/block.ts';
import { defineFields } from '../../contract/field.ts';
import { airTaken, leakFlow } from './leak.ts';
import { gapClosed, gapGrowth, ringGapShare } from './ring-gap.ts';

const volume = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'quantity', dimension: 'volume', units: ['cm3', 'in3'], min: 0, above: true }) as const;
const length = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'quantity', dimension: 'length', units: ['mm', 'in'], min: 0 }) as const;
const flow = ['L/min', 'ft3/min'] as const;
const gap = ['mm', 'in'] as const;

export const engineBlocks = {
  'crankcase-leak': block({
    what: 'air a crankcase loses under test, from the fall of the gauge',
    source: 'arithmetic',
    fields: defineFields([
      volume('volume', 'Crankcase and cylinder'),
      { key: 'fall', label: 'Gauge lost', kind: 'quantity', dimension: 'pressure', units: ['kPa', 'psi'], min: 0 },
      { key: 'time', label: 'In', kind: 'quantity', dimension: 'time', units: ['s', 'min'], min: 0, above: true },
      {
        key: 'air',
        label: 'Air outside',
        kind: 'quantity',
        dimension: 'pressure',
        units: ['kPa', 'psi'],
        default: 101.325,
        min: 0,
        above: true,
      },
    ]),
    gives: { flow: { label: 'Air lost', units: flow } },
    run: (i) => ({ flow: leakFlow(i.volume, i.fall, i.time, i.air) }),
  }),
  'air-taken': block({
    what: 'air a two-stroke takes at a speed',
    source: 'arithmetic',
    fields: defineFields([
      volume('swept', 'Swept volume'),
      {
        key: 'rotation',
        label: 'Engine speed',
        kind: 'quantity',
        dimension: 'rotation',
        units: ['rpm', 'rpm'],
        min: 0,
      },
      { key: 'delivery', label: 'Share that is filled', kind: 'number', min: 0, max: 2 },
    ]),
    gives: { flow: { label: 'Air taken', units: flow } },
    run: (i) => ({ flow: airTaken(i.swept, i.rotation, i.delivery) }),
  }),
  'ring-gap': block({
    what: 'usual gap of a piston ring for a bore',
    source: 'common-practice',
    fields: defineFields([length('bore', 'Bore')]),
    gives: { least: { label: 'Least', units: gap }, most: { label: 'Most', units: gap } },
    run: (i) => ({ least: i.bore * ringGapShare.least, most: i.bore * ringGapShare.most }),
  }),
  'ring-gap-growth': block({
    what: 'how much a ring gap grows when the bore wears',
    source: 'arithmetic',
    fields: defineFields([length('growth', 'Growth of the bore')]),
    gives: { gap: { label: 'Growth of the gap', units: gap } },
    run: (i) => ({ gap: gapGrowth(i.growth) }),
  }),
  'ring-gap-heat': block({
    what: 'how much of a ring gap heat closes',
    source: 'ring-heat',
    fields: defineFields([
      length('bore', 'Bore'),
      {
        key: 'alpha',
        label: 'Expansion of the ring',
        kind: 'quantity',
        dimension: 'expansion',
        units: ['µm/(m·K)', 'µin/(in·°F)'],
        default: 11,
        min: 0,
      },
      {
        key: 'rise',
        label: 'Ring hotter than the wall by',
        kind: 'quantity',
        dimension: 'temperature-difference',
        units: ['°C diff', '°F diff'],
      },
    ]),
    gives: { gap: { label: 'Gap closed', units: gap } },
    run: (i) => ({ gap: gapClosed(i.bore, i.alpha, i.rise) }),
  }),
};
