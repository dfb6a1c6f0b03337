import { block } from '../../contract/block.ts';
import { defineFields } from '../../contract/field.ts';
import type { Problem } from '../../contract/result.ts';
import { slideForce, slideTorque, smoothing } from './grip.ts';
import { hoop, hubFactor, interferenceFor, pressure, shaftFactor, type Joint } from './pressure.ts';

const mm = ['mm', 'in'] as const;
const micro = ['µm', 'thou'] as const;
const mpa = ['MPa', 'psi'] as const;
const length = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'quantity', dimension: 'length', units: mm, min: 0, above: true }) as const;
const modulus = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'quantity', dimension: 'pressure', units: ['GPa', 'psi'], min: 0, above: true }) as const;
const poisson = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'number', min: 0, max: 0.5 }) as const;
const pressureField = {
  key: 'pressure',
  label: 'Pressure',
  kind: 'quantity',
  dimension: 'pressure',
  units: mpa,
  min: 0,
} as const;
const friction = { key: 'friction', label: 'Friction', kind: 'number', min: 0, max: 2 } as const;
const shape = [
  length('diameter', 'Diameter of the joint'),
  length('hubOutside', 'Outside of the outer part'),
  { ...length('shaftBore', 'Hole through the inner part'), above: false, default: 0 },
] as const;
const stiff = [
  modulus('hubE', "Young's modulus, outer"),
  poisson('hubNu', "Poisson's ratio, outer"),
  modulus('shaftE', "Young's modulus, inner"),
  poisson('shaftNu', "Poisson's ratio, inner"),
] as const;

/** The formulas divide by the walls: a part without one is refused before it reaches them. */
function noWall({ diameter, hubOutside, shaftBore }: Joint): { readonly problem: Problem } | undefined {
  if (hubOutside <= diameter)
    return { problem: { field: 'hubOutside', code: 'no-wall', data: { outside: hubOutside, joint: diameter } } };
  return shaftBore >= diameter
    ? { problem: { field: 'shaftBore', code: 'no-inner-wall', data: { bore: shaftBore, joint: diameter } } }
    : undefined;
}

export const blocks = {
  pressure: block({
    what: 'pressure and hoop stresses of an interference fit',
    source: 'shigley-press-fits',
    fields: defineFields([
      ...shape,
      ...stiff,
      {
        key: 'interference',
        label: 'Interference on the diameter',
        kind: 'quantity',
        dimension: 'length',
        units: micro,
        min: 0,
      },
    ]),
    gives: {
      pressure: { label: 'Pressure', units: mpa },
      hubBore: { label: 'Hoop stress, outer, at its bore', units: mpa },
      hubOutside: { label: 'Hoop stress, outer, outside', units: mpa },
      shaftSurface: { label: 'Hoop stress, inner, at the joint', units: mpa },
      shaftBore: { label: 'Hoop stress, inner, at its bore', units: mpa },
    },
    run: (i) => {
      const p = pressure(i, i.interference);
      return noWall(i) ?? { pressure: p, ...hoop(i, p) };
    },
  }),
  interference: block({
    what: 'interference on the diameter that gives a pressure',
    source: 'shigley-press-fits',
    fields: defineFields([...shape, ...stiff, pressureField]),
    gives: { interference: { label: 'Interference', units: micro } },
    run: (i) => noWall(i) ?? { interference: interferenceFor(i, i.pressure) },
  }),
  'shape-factors': block({
    what: 'shape factors of outer and inner part',
    source: 'shigley-press-fits',
    fields: defineFields(shape),
    gives: { hub: { label: 'Outer' }, shaft: { label: 'Inner' } },
    run: (i) =>
      noWall({ ...i, hubE: 1, hubNu: 0, shaftE: 1, shaftNu: 0 }) ?? { hub: hubFactor(i), shaft: shaftFactor(i) },
  }),
  grip: block({
    what: 'force and torque at which a joint slides',
    source: 'shigley-press-fits',
    fields: defineFields([
      length('diameter', 'Diameter of the joint'),
      length('length', 'Length of the joint'),
      pressureField,
      friction,
    ]),
    gives: { force: { label: 'Force', units: ['kN', 'lbf'] }, torque: { label: 'Torque', units: ['N·m', 'lbf·ft'] } },
    run: (i) => ({
      force: slideForce(i.diameter, i.length, i.pressure, i.friction),
      torque: slideTorque(i.diameter, i.length, i.pressure, i.friction),
    }),
  }),
  smoothing: block({
    what: 'interference lost as surface peaks are pressed flat',
    source: 'din-7190-smoothing',
    fields: defineFields([
      { key: 'roughShaft', label: 'Rz of the inner part', kind: 'quantity', dimension: 'length', units: micro, min: 0 },
      { key: 'roughHub', label: 'Rz of the bore', kind: 'quantity', dimension: 'length', units: micro, min: 0 },
    ]),
    gives: { lost: { label: 'Interference lost', units: micro } },
    run: (i) => ({ lost: smoothing(i.roughShaft, i.roughHub) }),
  }),
};
