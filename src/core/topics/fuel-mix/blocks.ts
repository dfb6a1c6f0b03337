import { block } from '../../contract/block.ts';
import { defineFields } from '../../contract/field.ts';
import { correction, fuelForOil, oilForFuel, partsOf } from './mix.ts';

const ratio = { key: 'ratio', label: 'Parts of gasoline to 1 of oil', kind: 'number', min: 0, above: true } as const;
const large = ['L', 'gal'] as const;
const small = ['mL', 'fl oz'] as const;

export const blocks = {
  'oil-for-fuel': block({
    what: 'oil for an amount of gasoline',
    source: 'fuel-mix-arithmetic',
    fields: defineFields([
      { key: 'fuel', label: 'Gasoline', kind: 'quantity', dimension: 'volume', units: large, min: 0 },
      ratio,
    ]),
    gives: { oil: { label: 'Oil', units: small } },
    run: (i) => ({ oil: oilForFuel(i.fuel, i.ratio) }),
  }),
  'fuel-for-oil': block({
    what: 'gasoline for an amount of oil',
    source: 'fuel-mix-arithmetic',
    fields: defineFields([
      { key: 'oil', label: 'Oil', kind: 'quantity', dimension: 'volume', units: small, min: 0 },
      ratio,
    ]),
    gives: { fuel: { label: 'Gasoline', units: large } },
    run: (i) => ({ fuel: fuelForOil(i.oil, i.ratio) }),
  }),
  correction: block({
    what: 'what turns a can mixed at one ratio into another',
    source: 'fuel-mix-arithmetic',
    fields: defineFields([
      { key: 'can', label: 'Mix in the can', kind: 'quantity', dimension: 'volume', units: large, min: 0 },
      { ...ratio, key: 'mixedAt', label: 'Mixed at' },
      ratio,
    ]),
    gives: { oil: { label: 'Oil to add', units: small }, fuel: { label: 'Gasoline to add', units: large } },
    run: (i) => ({ ...correction(partsOf(i.can, i.mixedAt), i.ratio) }),
  }),
};
