import { block } from '../../contract/block.ts';
import { defineFields } from '../../contract/field.ts';
import { coolingTime } from './cooling-time.ts';
import { allMaterials, growth, materialOf, temperatureChange, warmLoss } from '../../materials/index.ts';

const micro = ['µm', 'thou'] as const;
const expansion = ['µm/(m·K)', 'µin/(in·°F)'] as const;
const diff = ['°C diff', '°F diff'] as const;
const diameter = {
  key: 'diameter',
  label: 'Diameter',
  kind: 'quantity',
  dimension: 'length',
  units: ['mm', 'in'],
  min: 0,
  above: true,
} as const;
const alpha = {
  key: 'alpha',
  label: 'Expansion',
  kind: 'quantity',
  dimension: 'expansion',
  units: expansion,
  min: 0,
  above: true,
} as const;
const change = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'quantity', dimension: 'temperature-difference', units: diff }) as const;

export const blocks = {
  rise: block({
    what: 'temperature change that opens a fit by its interference and a gap',
    source: 'boresi-schmidt',
    fields: defineFields([
      diameter,
      { key: 'interference', label: 'Interference', kind: 'quantity', dimension: 'length', units: micro },
      { key: 'gap', label: 'Gap', kind: 'quantity', dimension: 'length', units: micro, default: 0, min: 0 },
      alpha,
    ]),
    gives: { change: { label: 'Temperature change', units: diff, decimals: [1, 1] } },
    run: (i) => ({ change: temperatureChange(i.diameter, i.interference, i.gap, i.alpha) }),
  }),
  growth: block({
    what: 'change of a diameter with temperature',
    source: 'arithmetic',
    fields: defineFields([diameter, alpha, change('change', 'Temperature change')]),
    gives: { growth: { label: 'Growth', units: micro } },
    run: (i) => ({ growth: growth(i.diameter, i.alpha, i.change) }),
  }),
  'warm-loss': block({
    what: 'interference lost when a housing warms more than its ring grows',
    source: 'arithmetic',
    fields: defineFields([
      diameter,
      { ...alpha, key: 'housing', label: 'Expansion of the housing' },
      { ...alpha, key: 'ring', label: 'Expansion of the ring' },
      change('rise', 'Rise of both'),
    ]),
    gives: { loss: { label: 'Interference lost', units: micro } },
    run: (i) => ({ loss: warmLoss(i.diameter, i.housing, i.ring, i.rise) }),
  }),
  'open-time': block({
    what: 'time a warmed wall takes to cool from one rise to another',
    source: 'lumped-cooling',
    fields: defineFields([
      {
        key: 'wall',
        label: 'Wall thickness',
        kind: 'quantity',
        dimension: 'length',
        units: ['mm', 'in'],
        min: 0,
        above: true,
      },
      { key: 'material', label: 'Material', kind: 'choice', options: allMaterials },
      {
        key: 'transfer',
        label: 'Heat transfer to the air',
        kind: 'quantity',
        dimension: 'heat-transfer',
        units: ['W/(m2·K)', 'W/(m2·K)'],
        default: 12,
        min: 0,
        above: true,
      },
      change('from', 'Rise at the start'),
      change('to', 'Rise at the end'),
    ]),
    gives: { time: { label: 'Time', units: ['min', 'min'] } },
    run: (i) => {
      const m = materialOf(i.material);
      return { time: coolingTime(i.wall, m.density, m.heat, i.transfer, i.from, i.to) };
    },
  }),
  material: block({
    what: 'expansion and stiffness of a material, with their sources',
    source: 'callister-expansion',
    fields: defineFields([{ key: 'material', label: 'Material', kind: 'choice', options: allMaterials }]),
    gives: {
      alpha: { label: 'Expansion', units: expansion },
      alphaSource: { label: 'Source of the expansion' },
      modulus: { label: "Young's modulus", units: ['GPa', 'GPa'] },
      poisson: { label: "Poisson's ratio" },
      elasticSource: { label: 'Source of the stiffness' },
    },
    run: (i) => {
      const m = materialOf(i.material);
      return {
        alpha: m.alpha,
        alphaSource: m.alphaSource,
        modulus: m.E,
        poisson: m.nu,
        elasticSource: m.elasticSource,
      };
    },
  }),
};
