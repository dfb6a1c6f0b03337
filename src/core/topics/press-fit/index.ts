/** Press fit: pressure, stress, force and torque of an interference fit. */
import type { Carry } from '../../contract/carry.ts';
import type { Part } from '../../contract/part.ts';
import * as all from './formulas.ts';

export { fields } from './fields.ts';
export { compute } from './compute.ts';
export { blocks } from './blocks.ts';
export { words } from './words.ts';
export {
  hoop,
  hubEquivalent,
  hubFactor,
  interferenceFor,
  pressure,
  shaftFactor,
  type Hoop,
  type Joint,
} from './pressure.ts';
export { frictions, slideForce, slideTorque, smoothing, tools } from './grip.ts';

export const title = 'Press fit';
export const formulas = Object.values(all);
export const sources = [
  'shigley-press-fits',
  'din-7190-smoothing',
  'press-friction',
  'materials-memory',
  'common-practice',
];
export const hazards = ['press-force'];
const joint = [
  'diameter',
  'length',
  'hubOutside',
  'shaftBore',
  'most',
  'hub',
  'shaft',
  'smoothing',
  'roughHub',
  'roughShaft',
] as const;
const strain = [...joint.filter((key) => key !== 'length'), 'hubStrength'];
export const decides = {
  tool: [...joint, 'surface', 'frictionHigh', 'hubStrength'],
  stress: strain,
};
export const parts: readonly Part[] = [
  { gives: ['lost'], from: ['smoothing', 'roughHub', 'roughShaft'] },
  { gives: ['hubHoop', 'hubOuterHoop', 'shaftHoop', 'shaftBoreHoop', 'yieldShare'], from: strain },
  { gives: ['pressure'], from: [...strain, 'least'] },
  { gives: ['pushIn', 'pushOut', 'torque'], from: [...joint, 'least', 'surface', 'frictionLow', 'frictionHigh'] },
];
export const carries: readonly Carry[] = [
  {
    to: 'running-clearance',
    what: 'the outer ring in its housing',
    when: { field: 'shaft', is: ['bearing-steel'] },
    with: {
      outside: { field: 'diameter' },
      outerRaceway: { field: 'shaftBore' },
      housingOutside: { field: 'hubOutside' },
      housingLeast: { field: 'least' },
      housingMost: { field: 'most' },
    },
  },
  {
    to: 'running-clearance',
    what: 'the inner ring on its shaft',
    when: { field: 'hub', is: ['bearing-steel'] },
    with: {
      bore: { field: 'diameter' },
      shaftBore: { field: 'shaftBore' },
      shaftLeast: { field: 'least' },
      shaftMost: { field: 'most' },
    },
  },
];
export const example = {
  diameter: '52 mm',
  length: '14 mm',
  hubOutside: '80 mm',
  shaftBore: '46.5 mm',
  least: '-4 µm',
  most: '39 µm',
  hub: 'aluminium-die-cast',
  shaft: 'bearing-steel',
  surface: 'oiled',
};
