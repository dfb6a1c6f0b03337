import { block } from '../../contract/block.ts';
import { defineFields } from '../../contract/field.ts';
import {
  frictionTorque,
  hoopAtBore,
  lostGrip,
  ringInertia,
  ringMass,
  ringStress,
  spinEnergy,
  stopTime,
  turnsToStop,
} from './disc.ts';

const length = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'quantity', dimension: 'length', units: ['mm', 'in'], min: 0 }) as const;
const rotation = {
  key: 'rotation',
  label: 'Speed',
  kind: 'quantity',
  dimension: 'rotation',
  units: ['rpm', 'rpm'],
  min: 0,
} as const;
const inertia = {
  key: 'inertia',
  label: 'Inertia',
  kind: 'quantity',
  dimension: 'inertia',
  units: ['kg·m2', 'kg·m2'],
  min: 0,
  above: true,
} as const;
const density = {
  key: 'density',
  label: 'Density',
  kind: 'quantity',
  dimension: 'density',
  units: ['kg/m3', 'kg/m3'],
  default: 7850,
  min: 1,
} as const;
const poisson = { key: 'poisson', label: 'Poisson’s ratio', kind: 'number', default: 0.3, min: 0, max: 0.5 } as const;
const stress = ['MPa', 'ksi'] as const;
const ring = [{ ...length('diameter', 'Outer diameter'), above: true }, length('bore', 'Bore')] as const;

export const blocks = {
  disc: block({
    what: 'mass and inertia of a flat disc with a bore',
    source: 'disc-energy',
    fields: defineFields([...ring, length('thickness', 'Thickness'), density]),
    gives: { mass: { label: 'Mass', units: ['kg', 'lb'] }, inertia: { label: 'Inertia', units: ['kg·m2', 'kg·m2'] } },
    run: (i) => {
      if (i.bore >= i.diameter)
        return { problem: { field: 'bore', code: 'bore-too-large', data: { max: i.diameter } } };
      const mass = ringMass(i.diameter, i.bore, i.thickness, i.density);
      return { mass, inertia: ringInertia(mass, i.diameter, i.bore) };
    },
  }),
  energy: block({
    what: 'energy of anything that turns',
    source: 'khurmi-machines',
    fields: defineFields([inertia, rotation]),
    gives: { energy: { label: 'Energy', units: ['J', 'ft·lbf'] } },
    run: (i) => ({ energy: spinEnergy(i.inertia, i.rotation) }),
  }),
  'run-down': block({
    what: 'friction torque from a stop time, or the stop time from a torque',
    source: 'tayal-mechanics',
    fields: defineFields([
      inertia,
      rotation,
      {
        key: 'time',
        label: 'Time to standstill',
        kind: 'quantity',
        dimension: 'time',
        units: ['s', 's'],
        min: 0,
        above: true,
        optional: true,
      },
      {
        key: 'torque',
        label: 'Friction torque',
        kind: 'quantity',
        dimension: 'torque',
        units: ['N·m', 'lbf·ft'],
        min: 0,
        above: true,
        optional: true,
      },
    ]),
    gives: {
      torque: { label: 'Friction torque', units: ['N·m', 'lbf·ft'] },
      time: { label: 'Time to standstill', units: ['s', 's'] },
      turns: { label: 'Turns' },
    },
    run: (i) => {
      const time = i.time ?? (i.torque === undefined ? undefined : stopTime(i.inertia, i.rotation, i.torque));
      if (time === undefined) return { problem: { field: 'time', code: 'missing' } };
      return {
        torque: i.time === undefined ? i.torque : frictionTorque(i.inertia, i.rotation, time),
        time,
        turns: turnsToStop(i.rotation, time),
      };
    },
  }),
  'hoop-stress': block({
    what: 'greatest stress of a spinning disc, at its bore',
    source: 'ugural-disc',
    fields: defineFields([...ring, rotation, density, poisson]),
    gives: {
      bore: { label: 'Stress at the bore', units: stress },
      ring: { label: 'Stress of a thin ring', units: stress },
    },
    run: (i) => ({
      bore: hoopAtBore(i.diameter, i.bore, i.rotation, i.density, i.poisson),
      ring: ringStress(i.density, Math.PI * i.diameter * i.rotation),
    }),
  }),
  'lost-grip': block({
    what: 'interference a spinning disc loses on a solid shaft, and what that interference makes at rest',
    source: 'ugural-disc',
    fields: defineFields([
      ...ring,
      rotation,
      density,
      poisson,
      {
        key: 'modulus',
        label: 'Modulus of elasticity',
        kind: 'quantity',
        dimension: 'pressure',
        units: ['GPa', 'ksi'],
        min: 1,
      },
    ]),
    gives: {
      interference: { label: 'Radial interference lost', units: ['µm', 'thou'] },
      pressure: { label: 'Pressure at rest', units: stress },
      hoop: { label: 'Hoop stress at rest', units: stress },
    },
    run: (i) =>
      i.bore >= i.diameter || i.bore === 0
        ? { problem: { field: 'bore', code: 'bore-too-large', data: { max: i.diameter } } }
        : { ...lostGrip(i.diameter, i.bore, i.rotation, i.density, i.poisson, i.modulus) },
  }),
};
