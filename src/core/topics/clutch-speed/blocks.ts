import { block } from '../../contract/block.ts';
import { defineFields } from '../../contract/field.ts';
import { engagement, heldTorque, lining, shoeAtDrum, shoeForce, shoeMassFor } from './shoes.ts';

const rotation = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'quantity', dimension: 'rotation', units: ['rpm', 'rpm'], min: 0, above: true }) as const;
const length = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'quantity', dimension: 'length', units: ['mm', 'in'], min: 0, above: true }) as const;
const shoes = { key: 'shoes', label: 'Shoes', kind: 'count', min: 1 } as const;
const friction = { key: 'friction', label: 'Friction', kind: 'number', min: 0, above: true } as const;
const shoe = [
  {
    key: 'mass',
    label: 'Mass of one shoe',
    kind: 'quantity',
    dimension: 'mass',
    units: ['kg', 'lb'],
    min: 0,
    above: true,
  },
  length('radius', 'Center of mass at rest'),
  { key: 'spring', label: 'Spring force at rest', kind: 'quantity', dimension: 'force', units: ['N', 'lbf'], min: 0 },
  {
    key: 'rate',
    label: 'Spring rate',
    kind: 'quantity',
    dimension: 'stiffness',
    units: ['N/mm', 'lbf/in'],
    default: 0,
    min: 0,
  },
  {
    key: 'gap',
    label: 'Gap to the drum',
    kind: 'quantity',
    dimension: 'length',
    units: ['mm', 'in'],
    default: 0,
    min: 0,
  },
] as const;
const torque = ['N·m', 'lbf·ft'] as const;

export const blocks = {
  engagement: block({
    what: 'engagement speed from shoe and spring',
    source: 'bhandari-elements',
    fields: defineFields([...shoe]),
    gives: { rotation: { label: 'Engages at', units: ['rpm', 'rpm'] } },
    run: (i) => ({ rotation: engagement(shoeAtDrum(i.mass, i.radius, i.spring, i.rate, i.gap)) }),
  }),
  torque: block({
    what: 'torque and power a clutch holds at a speed',
    source: 'khurmi-clutch',
    fields: defineFields([
      ...shoe,
      shoes,
      friction,
      length('drum', 'Drum, inside radius'),
      rotation('rotation', 'Speed'),
    ]),
    gives: {
      force: { label: 'Force of one shoe', units: ['N', 'lbf'] },
      torque: { label: 'Torque', units: torque },
      power: { label: 'Power', units: ['kW', 'hp'] },
    },
    run: (i) => {
      const at = shoeAtDrum(i.mass, i.radius, i.spring, i.rate, i.gap);
      const T = heldTorque(at, i.shoes, i.friction, i.drum, i.rotation);
      return { force: shoeForce(at, i.rotation), torque: T, power: T * 2 * Math.PI * i.rotation };
    },
  }),
  'shoe-for-power': block({
    what: 'shoe mass and lining a clutch needs',
    source: 'bhandari-elements',
    fields: defineFields([
      { key: 'power', label: 'Power', kind: 'quantity', dimension: 'power', units: ['kW', 'hp'], min: 0, above: true },
      rotation('rotation', 'Running speed'),
      rotation('engages', 'Engagement speed'),
      shoes,
      friction,
      length('drum', 'Drum, inside radius'),
      length('radius', 'Center of mass'),
      {
        key: 'arc',
        label: 'Arc of one lining',
        kind: 'quantity',
        dimension: 'angle',
        units: ['°', '°'],
        min: 1,
        max: 180,
      },
      {
        key: 'pressure',
        label: 'Pressure allowed',
        kind: 'quantity',
        dimension: 'pressure',
        units: ['MPa', 'psi'],
        min: 0,
        above: true,
      },
    ]),
    gives: {
      mass: { label: 'Mass of one shoe', units: ['kg', 'lb'] },
      length: { label: 'Lining, length', units: ['mm', 'in'] },
      width: { label: 'Lining, width', units: ['mm', 'in'] },
    },
    run: (i) => {
      if (i.engages >= i.rotation) return { problem: { field: 'engages', code: 'engages-over-running' } };
      const T = i.power / (2 * Math.PI * i.rotation);
      return {
        mass: shoeMassFor(T, i.shoes, i.friction, i.drum, i.radius, i.rotation, i.engages),
        ...lining(T / (i.shoes * i.friction * i.drum), i.pressure, i.drum, i.arc),
      };
    },
  }),
};
