import { defineFields } from '../../contract/field.ts';
import { allMaterials } from '../../materials/index.ts';

const mm = ['mm', 'in'] as const;
const micro = ['µm', 'thou'] as const;
const surface = 'Surfaces';

export const fields = defineFields([
  { key: 'diameter', label: 'Diameter of the joint', kind: 'quantity', dimension: 'length', units: mm, min: 2, max: 1000 },
  { key: 'length', label: 'Length of the joint', kind: 'quantity', dimension: 'length', units: mm, min: 1, max: 1000, help: 'For a bearing, its width less the chamfers.' },
  { key: 'hubOutside', label: 'Outside diameter of the outer part', kind: 'quantity', dimension: 'length', units: mm, min: 3, max: 3000, help: 'For a boss in a casting, twice the thinnest wall plus the bore.' },
  { key: 'shaftBore', label: 'Hole through the inner part', kind: 'quantity', dimension: 'length', units: mm, default: 0, min: 0, max: 1000, help: '0 for a solid shaft; for a bearing ring, its raceway diameter.' },
  { key: 'least', label: 'Least interference', kind: 'quantity', dimension: 'length', units: micro, min: -500, max: 5000, help: 'On the diameter; below zero is clearance. From the fit, or measured.' },
  { key: 'most', label: 'Most interference', kind: 'quantity', dimension: 'length', units: micro, min: -500, max: 5000 },
  { key: 'hub', label: 'Outer part is', kind: 'choice', default: 'aluminium-die-cast', options: allMaterials },
  { key: 'shaft', label: 'Inner part is', kind: 'choice', default: 'bearing-steel', options: allMaterials },
  { key: 'surface', label: 'Joint is put together', kind: 'choice', default: 'oiled', options: [{ value: 'oiled', label: 'Oiled' }, { value: 'dry', label: 'Dry and clean' }, { value: 'own', label: 'With a friction I give' }], group: surface },
  { key: 'frictionLow', label: 'Friction, lowest', kind: 'number', default: 0.1, min: 0.01, max: 1, when: { field: 'surface', is: ['own'] }, group: surface },
  { key: 'frictionHigh', label: 'Friction, highest', kind: 'number', default: 0.15, min: 0.01, max: 1, when: { field: 'surface', is: ['own'] }, group: surface },
  { key: 'smoothing', label: 'Count the smoothing of the surfaces', kind: 'yes-no', default: true, more: true, group: surface, help: 'Cold pressing flattens the peaks and takes some interference. Say no for a warm joint.' },
  { key: 'roughHub', label: 'Roughness depth Rz of the bore', kind: 'quantity', dimension: 'length', units: micro, default: 6.3, min: 0, max: 100, more: true, when: { field: 'smoothing', is: [true] }, group: surface },
  { key: 'roughShaft', label: 'Roughness depth Rz of the inner part', kind: 'quantity', dimension: 'length', units: micro, default: 2, min: 0, max: 100, more: true, when: { field: 'smoothing', is: [true] }, group: surface },
  { key: 'hubStrength', label: 'Yield strength of the outer part', kind: 'quantity', dimension: 'pressure', units: ['MPa', 'psi'], optional: true, min: 10, max: 3000, more: true, help: 'Leave empty for a common figure of the material.' },
]);
