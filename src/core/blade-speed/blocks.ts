import { block } from '../block.ts';
import { defineFields } from '../field.ts';
import { cutDepth } from './depth.ts';
import { drivenRotation, rotationForSpeed, surfaceSpeed } from './surface-speed.ts';

const diameter = { key: 'diameter', label: 'Blade diameter', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], min: 0, above: true } as const;
const rotation = { key: 'rotation', label: 'Speed', kind: 'quantity', dimension: 'rotation', units: ['rpm', 'rpm'], min: 0 } as const;

export const blocks = {
  'surface-speed': block({
    what: 'rim speed from diameter and shaft speed',
    source: 'masonry-magazine-2004',
    fields: defineFields([diameter, rotation]),
    gives: { speed: { label: 'Surface speed', units: ['m/s', 'ft/min'] } },
    run: (i) => ({ speed: surfaceSpeed(i.diameter, i.rotation) }),
  }),
  'rotation-for-speed': block({
    what: 'shaft speed at which the rim reaches a speed',
    source: 'arithmetic',
    fields: defineFields([diameter, { key: 'speed', label: 'Surface speed', kind: 'quantity', dimension: 'speed', units: ['m/s', 'ft/min'], min: 0 }]),
    gives: { rotation: { label: 'Shaft speed', units: ['rpm', 'rpm'] } },
    run: (i) => ({ rotation: rotationForSpeed(i.speed, i.diameter) }),
  }),
  'driven-rotation': block({
    what: 'shaft speed behind a belt drive',
    source: 'khurmi-machines',
    fields: defineFields([
      rotation,
      { key: 'driving', label: 'Driving pulley', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], min: 0, above: true },
      { key: 'driven', label: 'Driven pulley', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], min: 0, above: true },
      { key: 'slip', label: 'Slip', kind: 'quantity', dimension: 'ratio', units: ['%', '%'], default: 0, min: 0, max: 100 },
    ]),
    gives: { rotation: { label: 'Driven speed', units: ['rpm', 'rpm'] } },
    run: (i) => ({ rotation: drivenRotation(i.rotation, i.driving, i.driven, i.slip) }),
  }),
  'cut-depth': block({
    what: 'greatest depth of cut from blade, flange and gap',
    source: 'geometry',
    fields: defineFields([
      diameter,
      { key: 'flange', label: 'Part that meets the work first', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], min: 0 },
      { key: 'clearance', label: 'Gap kept', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], default: 0, min: 0 },
    ]),
    gives: { depth: { label: 'Depth of cut', units: ['mm', 'in'] } },
    run: (i) => ({ depth: cutDepth(i.diameter, i.flange, i.clearance) }),
  }),
};
