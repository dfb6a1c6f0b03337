import { defineFields } from '../../contract/field.ts';
import { housingMaterials, shaftMaterials } from '../../materials/index.ts';

const mm = ['mm', 'in'] as const;
const micro = ['µm', 'thou'] as const;
const diff = ['°C diff', '°F diff'] as const;
const [shaft, housing, heat] = ['On the shaft', 'In the housing', 'Heat'];
const fit = <const K extends string>(key: K, label: string, group: string | undefined) => ({ key, label, kind: 'quantity', dimension: 'length', units: micro, min: -300, max: 500, group }) as const;

export const fields = defineFields([
  { key: 'bore', label: 'Bore of the bearing', kind: 'quantity', dimension: 'length', units: mm, min: 6, max: 200, limitFrom: 'iso-5753-1' },
  { key: 'outside', label: 'Outside diameter of the bearing', kind: 'quantity', dimension: 'length', units: mm, min: 10, max: 500 },
  { key: 'group', label: 'Clearance group', kind: 'choice', default: 'CN', options: [{ value: 'C2', label: 'C2, small' }, { value: 'CN', label: 'Normal (none marked)' }, { value: 'C3', label: 'C3, large' }, { value: 'C4', label: 'C4, larger' }] },
  { ...fit('shaftLeast', 'Shaft fit, least interference', shaft), help: 'Below zero is clearance. From the bearing fit or your micrometer.' },
  fit('shaftMost', 'Shaft fit, most interference', shaft),
  { key: 'shaftMaterial', label: 'Shaft material', kind: 'choice', default: 'carbon-steel', options: shaftMaterials, more: true, group: shaft },
  { key: 'shaftBore', label: 'Hole through the shaft', kind: 'quantity', dimension: 'length', units: mm, default: 0, min: 0, max: 190, more: true, group: shaft },
  fit('housingLeast', 'Housing fit, least interference', housing),
  fit('housingMost', 'Housing fit, most interference', housing),
  { key: 'housingMaterial', label: 'Housing material', kind: 'choice', default: 'aluminium-die-cast', options: housingMaterials, group: housing },
  { key: 'housingOutside', label: 'Outside of the boss round the bearing', kind: 'quantity', dimension: 'length', units: mm, optional: true, min: 10, max: 2000, more: true, group: housing, help: 'Twice the thinnest wall plus the bore. Leave empty for a very thick wall, the safe side.' },
  { key: 'surface', label: 'Surface of the seats', kind: 'choice', default: 'ground', more: true, options: [{ value: 'ground', label: 'Ground or finely bored' }, { value: 'turned', label: 'Turned' }, { value: 'ideal', label: 'Count every micrometer' }], help: 'Fitting flattens the peaks and takes some of the interference.' },
  { key: 'difference', label: 'Inner ring warmer than outer by', kind: 'quantity', dimension: 'temperature-difference', units: diff, default: 10, min: -50, max: 100, group: heat, limitFrom: 'common-practice' },
  { key: 'housingRise', label: 'Housing and outer ring warmer than the room by', kind: 'quantity', dimension: 'temperature-difference', units: diff, default: 40, min: -40, max: 150, group: heat, help: 'A light-alloy housing grows away from the ring and gives some clearance back.' },
  { key: 'innerRaceway', label: 'Raceway diameter of the inner ring', kind: 'quantity', dimension: 'length', units: mm, optional: true, min: 6, max: 300, more: true, help: 'Leave empty for the usual guess.' },
  { key: 'outerRaceway', label: 'Raceway diameter of the outer ring', kind: 'quantity', dimension: 'length', units: mm, optional: true, min: 8, max: 490, more: true },
]);
