/** Fields the blocks share. */
const none = { min: 0 } as const;

export const diameters = [
  {
    key: 'small',
    label: 'Small pulley',
    kind: 'quantity',
    dimension: 'length',
    units: ['mm', 'in'],
    min: 0,
    above: true,
  },
  {
    key: 'large',
    label: 'Large pulley',
    kind: 'quantity',
    dimension: 'length',
    units: ['mm', 'in'],
    min: 0,
    above: true,
  },
] as const;
export const centre = {
  key: 'centre',
  label: 'Center distance',
  kind: 'quantity',
  dimension: 'length',
  units: ['mm', 'in'],
  min: 0,
  above: true,
} as const;
export const wrap = {
  key: 'wrap',
  label: 'Wrap',
  kind: 'quantity',
  dimension: 'angle',
  units: ['°', '°'],
  min: 0,
  above: true,
} as const;
export const friction = {
  key: 'friction',
  label: 'Friction of belt on pulley',
  kind: 'number',
  min: 0,
  above: true,
} as const;
export const groove = {
  key: 'groove',
  label: 'Full groove angle (180° is flat)',
  kind: 'quantity',
  dimension: 'angle',
  units: ['°', '°'],
  default: 180,
  min: 5,
  max: 180,
} as const;
export const mass = {
  key: 'mass',
  label: 'Mass of one belt, per meter',
  kind: 'quantity',
  dimension: 'linear-mass',
  units: ['kg/m', 'lb/ft'],
  default: 0,
  ...none,
} as const;
export const speed = {
  key: 'speed',
  label: 'Belt speed',
  kind: 'quantity',
  dimension: 'speed',
  units: ['m/s', 'ft/min'],
  min: 0,
  above: true,
} as const;
export const belts = { key: 'belts', label: 'Number of belts', kind: 'count', default: 1, min: 1 } as const;
export const tension = {
  key: 'tension',
  label: 'Static tension of one strand',
  kind: 'quantity',
  dimension: 'force',
  units: ['N', 'lbf'],
  ...none,
} as const;
export const span = {
  key: 'span',
  label: 'Free span',
  kind: 'quantity',
  dimension: 'length',
  units: ['mm', 'in'],
  min: 0,
  above: true,
} as const;
export const bending = {
  key: 'bending',
  label: 'Bending stiffness',
  kind: 'quantity',
  dimension: 'bending-stiffness',
  units: ['N·m2', 'lbf·in2'],
  default: 0,
  ...none,
} as const;

export const force = ['N', 'lbf'] as const;
export const long = ['mm', 'in'] as const;
