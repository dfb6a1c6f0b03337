import { block } from '../../contract/block.ts';
import { defineFields } from '../../contract/field.ts';
import { bladeForDepth, cutDepth, cutLength, leastFlange, twinDepth } from './depth.ts';
import { readMarks } from './marks.ts';
import { drivenRotation, rotationForSpeed, surfaceSpeed } from './surface-speed.ts';

const diameter = {
  key: 'diameter',
  label: 'Blade diameter',
  kind: 'quantity',
  dimension: 'length',
  units: ['mm', 'in'],
  min: 0,
  above: true,
} as const;
const rotation = {
  key: 'rotation',
  label: 'Speed',
  kind: 'quantity',
  dimension: 'rotation',
  units: ['rpm', 'rpm'],
  min: 0,
} as const;
const speed = {
  key: 'speed',
  label: 'Surface speed',
  kind: 'quantity',
  dimension: 'speed',
  units: ['m/s', 'ft/min'],
  min: 0,
} as const;
const flange = {
  key: 'flange',
  label: 'Part that meets the work first',
  kind: 'quantity',
  dimension: 'length',
  units: ['mm', 'in'],
  min: 0,
} as const;
const clearance = {
  key: 'clearance',
  label: 'Gap kept',
  kind: 'quantity',
  dimension: 'length',
  units: ['mm', 'in'],
  default: 0,
  min: 0,
} as const;
const depth = {
  key: 'depth',
  label: 'Depth',
  kind: 'quantity',
  dimension: 'length',
  units: ['mm', 'in'],
  min: 0,
} as const;
const long = ['mm', 'in'] as const;
const rpm = ['rpm', 'rpm'] as const;

/** Cutting-off ratios are from memory; only the general third was read. */
const shares = { general: 1 / 3, 'abrasive-cut-off': 1 / 4, 'diamond-cut-off': 1 / 6 } as const;

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
    fields: defineFields([diameter, speed]),
    gives: {
      rotation: { label: 'Shaft speed', units: rpm },
      speed: { label: 'Surface speed', units: ['m/s', 'ft/min'] },
    },
    run: (i) => ({ rotation: rotationForSpeed(i.speed, i.diameter), speed: i.speed }),
  }),
  'driven-rotation': block({
    what: 'shaft speed behind a belt drive',
    source: 'khurmi-machines',
    fields: defineFields([
      rotation,
      {
        key: 'driving',
        label: 'Driving pulley',
        kind: 'quantity',
        dimension: 'length',
        units: ['mm', 'in'],
        min: 0,
        above: true,
      },
      {
        key: 'driven',
        label: 'Driven pulley',
        kind: 'quantity',
        dimension: 'length',
        units: ['mm', 'in'],
        min: 0,
        above: true,
      },
      {
        key: 'slip',
        label: 'Slip',
        kind: 'quantity',
        dimension: 'ratio',
        units: ['%', '%'],
        default: 0,
        min: 0,
        max: 100,
      },
    ]),
    gives: { rotation: { label: 'Driven speed', units: rpm } },
    run: (i) => ({ rotation: drivenRotation(i.rotation, i.driving, i.driven, i.slip) }),
  }),
  marks: block({
    what: 'the speeds marked on a blade against each other; the lowest is to be obeyed',
    source: 'arithmetic',
    fields: defineFields([
      diameter,
      { ...rotation, label: 'Revolutions a minute marked', above: true, optional: true },
      { ...speed, label: 'Meters a second marked', units: ['m/s', 'm/s'], above: true, optional: true },
      {
        ...speed,
        key: 'feet',
        label: 'Feet a minute marked',
        units: ['ft/min', 'ft/min'],
        above: true,
        optional: true,
      },
    ]),
    gives: {
      lowest: { label: 'Lowest mark', units: rpm },
      highest: { label: 'Highest mark', units: rpm },
      apart: { label: 'They lie apart by', units: ['%', '%'] },
      verdict: { label: 'Verdict' },
    },
    run: (i) => {
      const read = readMarks({
        diameter: i.diameter,
        rotation: i.rotation,
        speeds: [i.speed, i.feet].filter((v) => v !== undefined),
      });
      if (!read) return { problem: { field: '', code: 'no-mark' } };
      return {
        lowest: read.lowest,
        highest: read.highest,
        apart: read.apart,
        verdict: read.agree ? 'agree' : 'contradict',
      };
    },
  }),
  'cut-depth': block({
    what: 'greatest depth of cut from blade, flange and gap',
    source: 'geometry',
    fields: defineFields([diameter, flange, clearance]),
    gives: { depth: { label: 'Depth of cut', units: long } },
    run: (i) => {
      const most = cutDepth(i.diameter, i.flange, i.clearance);
      return most < 0
        ? {
            problem: {
              field: 'flange',
              code: 'flange-too-large',
              data: { got: i.flange, max: i.diameter - 2 * i.clearance },
            },
          }
        : { depth: most };
    },
  }),
  'blade-for-depth': block({
    what: 'blade that reaches a depth',
    source: 'geometry',
    fields: defineFields([depth, flange, clearance]),
    gives: { diameter: { label: 'Blade', units: long } },
    run: (i) => ({ diameter: bladeForDepth(i.depth, i.flange, i.clearance) }),
  }),
  'twin-depth': block({
    what: 'depth of a twin-blade head whose arm follows into the slot',
    source: 'geometry',
    fields: defineFields([
      diameter,
      { ...depth, key: 'reach', label: 'Stop on the surface to the blade shaft' },
      clearance,
    ]),
    gives: { depth: { label: 'Depth of cut', units: long } },
    run: (i) => ({ depth: twinDepth(i.diameter, i.reach, i.clearance) }),
  }),
  'cut-length': block({
    what: 'length of the cut at the surface with the saw standing',
    source: 'geometry',
    fields: defineFields([diameter, depth]),
    gives: { length: { label: 'Length at the surface', units: long } },
    run: (i) =>
      i.depth > i.diameter
        ? { problem: { field: 'depth', code: 'deeper-than-blade', data: { max: i.diameter } } }
        : { length: cutLength(i.diameter, i.depth) },
  }),
  'least-flange': block({
    what: 'least flange diameter for a blade',
    source: 'osha-1910-215',
    fields: defineFields([
      diameter,
      {
        key: 'rule',
        label: 'Rule',
        kind: 'choice',
        default: 'general',
        options: [
          { value: 'general', label: 'One third, wheels in general' },
          { value: 'abrasive-cut-off', label: 'One fourth, abrasive cutting-off wheels (from memory)' },
          { value: 'diamond-cut-off', label: 'One sixth, diamond blades with a steel center (from memory)' },
        ],
      },
    ]),
    gives: { flange: { label: 'Least flange', units: long }, source: { label: 'Source' } },
    run: (i) => ({
      flange: leastFlange(i.diameter, shares[i.rule]),
      source: i.rule === 'general' ? 'osha-1910-215' : 'cut-off-flange-share',
    }),
  }),
};
