import { defineFields } from '../../contract/field.ts';
import { housingMaterials, shaftMaterials } from '../../materials/index.ts';

const micro = ['µm', 'thou'] as const;
const degrees = ['°C', '°F'] as const;

export const fields = defineFields([
  {
    key: 'part', label: 'What is warmed', kind: 'choice', default: 'housing',
    options: [{ value: 'housing', label: 'The housing, to drop the bearing in' }, { value: 'ring', label: 'The bearing, to slide it over the shaft' }],
  },
  { key: 'diameter', label: 'Diameter of the seat', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], min: 3, max: 500, help: 'Outside diameter of the bearing in a housing, bore on a shaft.' },
  { key: 'interference', label: 'Tightest interference', kind: 'quantity', dimension: 'length', units: micro, min: -200, max: 1000, help: 'From the fit or from your micrometer: ring minus housing, or shaft minus ring. Below zero is clearance.' },
  { key: 'housingMaterial', label: 'Housing material', kind: 'choice', default: 'aluminium-die-cast', options: housingMaterials, when: { field: 'part', is: ['housing'] } },
  { key: 'shaftMaterial', label: 'Shaft material', kind: 'choice', default: 'carbon-steel', options: shaftMaterials, more: true, when: { field: 'part', is: ['ring'] } },
  { key: 'sealed', label: 'Sealed or greased bearing', kind: 'yes-no', default: true },
  { key: 'room', label: 'Room temperature', kind: 'quantity', dimension: 'temperature', units: degrees, default: 20, min: -20, max: 50 },
  { key: 'gap', label: 'Gap wanted for dropping in', kind: 'quantity', dimension: 'length', units: micro, default: 20, min: 0, max: 200, more: true, limitFrom: 'common-practice', help: 'Allows for reading errors and for what is lost on the way over.' },
  { key: 'cold', label: 'Chilled part gets down to', kind: 'quantity', dimension: 'temperature', units: degrees, default: -18, min: -80, max: 40, more: true, help: 'For doing both: bearing or shaft from the freezer.' },
  { key: 'heatTo', label: 'Temperature you will warm to', kind: 'quantity', dimension: 'temperature', units: degrees, optional: true, min: 0, max: 200, more: true, help: 'Leave empty to use the temperature needed. Hotter gives more time.' },
  { key: 'wall', label: 'Wall thickness of the warmed part', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], default: 8, min: 1, max: 100, more: true, help: 'For the time it stays open.' },
]);
