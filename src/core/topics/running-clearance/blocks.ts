import { block } from '../../contract/block.ts';
import { defineFields } from '../../contract/field.ts';
import { heatLoss, innerGrowth, outerShrink, racewayGuess } from './loss.ts';

const mm = ['mm', 'in'] as const;
const micro = ['µm', 'thou'] as const;
const length = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'quantity', dimension: 'length', units: mm, min: 0, above: true }) as const;
const modulus = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'quantity', dimension: 'pressure', units: ['GPa', 'psi'], min: 0, above: true }) as const;
const poisson = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'number', min: 0, max: 0.5 }) as const;
const interference = {
  key: 'interference',
  label: 'Interference',
  kind: 'quantity',
  dimension: 'length',
  units: micro,
} as const;
const stiff = [
  modulus('ringE', "Young's modulus of the ring"),
  poisson('ringNu', "Poisson's ratio of the ring"),
  modulus('otherE', "Young's modulus of the other part"),
  poisson('otherNu', "Poisson's ratio of the other part"),
] as const;

export const blocks = {
  'inner-growth': block({
    what: 'growth of the inner raceway on an oversize shaft',
    source: 'shigley-press-fits',
    fields: defineFields([
      length('diameter', 'Bore'),
      length('raceway', 'Inner raceway'),
      { ...length('shaftBore', 'Hole through the shaft'), above: false, default: 0 },
      ...stiff,
      interference,
    ]),
    gives: { growth: { label: 'Growth', units: micro } },
    run: (i) =>
      i.shaftBore >= i.diameter
        ? { problem: { field: 'shaftBore', code: 'no-shaft-wall', data: { hole: i.shaftBore, bore: i.diameter } } }
        : i.raceway <= i.diameter
          ? { problem: { field: 'raceway', code: 'raceway-order', data: { inner: i.raceway, outer: i.diameter } } }
          : { growth: innerGrowth(i, i.shaftBore, i.interference) },
  }),
  'outer-shrink': block({
    what: 'shrink of the outer raceway in an undersize housing',
    source: 'shigley-press-fits',
    fields: defineFields([
      length('diameter', 'Outside diameter'),
      length('raceway', 'Outer raceway'),
      {
        ...length('housingOutside', 'Outside of the housing'),
        optional: true,
        help: 'Leave empty for an endless wall.',
      },
      ...stiff,
      interference,
    ]),
    gives: { shrink: { label: 'Shrink', units: micro } },
    run: (i) => {
      const outside = i.housingOutside ?? Infinity;
      if (i.raceway >= i.diameter || outside <= i.diameter)
        return { problem: { field: 'raceway', code: 'raceway-order', data: { inner: i.raceway, outer: i.diameter } } };
      return { shrink: outerShrink(i, outside, i.interference) };
    },
  }),
  'heat-loss': block({
    what: 'clearance lost because the inner ring is warmer',
    source: 'arithmetic',
    fields: defineFields([
      length('raceway', 'Outer raceway'),
      {
        key: 'alpha',
        label: 'Expansion of the ring',
        kind: 'quantity',
        dimension: 'expansion',
        units: ['µm/(m·K)', 'µin/(in·°F)'],
        default: 12.5,
      },
      {
        key: 'difference',
        label: 'Inner warmer than outer by',
        kind: 'quantity',
        dimension: 'temperature-difference',
        units: ['°C diff', '°F diff'],
      },
    ]),
    gives: { loss: { label: 'Clearance lost', units: micro } },
    run: (i) => ({ loss: heatLoss(i.raceway, i.alpha, i.difference) }),
  }),
  raceways: block({
    what: 'raceway diameters by rule of thumb',
    source: 'raceway-rule',
    fields: defineFields([length('bore', 'Bore'), length('outside', 'Outside diameter')]),
    gives: { inner: { label: 'Inner raceway', units: mm }, outer: { label: 'Outer raceway', units: mm } },
    run: (i) => ({ ...racewayGuess(i.bore, i.outside) }),
  }),
};
