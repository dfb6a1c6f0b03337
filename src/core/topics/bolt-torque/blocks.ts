import { block } from '../../contract/block.ts';
import { defineFields } from '../../contract/field.ts';
import { gradeProofStress, inchThreadOf, inchThreads, proofStress, sizes, threadOf } from './tables.ts';
import { preload, preloadAt, stressArea, stripForce, tighteningTorque, torqueFactor } from './torque.ts';

const kilo = ['kN', 'lbf'] as const;
const torqueUnits = ['N·m', 'lbf·ft'] as const;
const length = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'quantity', dimension: 'length', units: ['mm', 'in'], min: 0, above: true }) as const;
const force = { key: 'force', label: 'Preload', kind: 'quantity', dimension: 'force', units: kilo, min: 0 } as const;
const factor = { key: 'factor', label: 'Torque factor K', kind: 'number', min: 0, above: true } as const;
const size = {
  key: 'size',
  label: 'Bolt',
  kind: 'choice',
  options: sizes.map((value) => ({ value, label: value })),
} as const;
const boltClass = {
  key: 'boltClass',
  label: 'Class',
  kind: 'choice',
  options: [
    { value: '8.8', label: '8.8' },
    { value: '10.9', label: '10.9' },
    { value: '12.9', label: '12.9' },
  ],
} as const;

export const blocks = {
  torque: block({
    what: 'torque for a preload',
    source: 'shigley-bolts',
    fields: defineFields([factor, force, length('diameter', 'Bolt size')]),
    gives: { torque: { label: 'Torque', units: torqueUnits } },
    run: (i) => ({ torque: tighteningTorque(i.factor, i.force, i.diameter) }),
  }),
  'preload-at': block({
    what: 'preload a torque gives',
    source: 'shigley-bolts',
    fields: defineFields([
      { key: 'torque', label: 'Torque', kind: 'quantity', dimension: 'torque', units: torqueUnits, min: 0 },
      factor,
      length('diameter', 'Bolt size'),
    ]),
    gives: { force: { label: 'Preload', units: kilo } },
    run: (i) => ({ force: preloadAt(i.torque, i.factor, i.diameter) }),
  }),
  preload: block({
    what: 'preload from proof stress, area and share',
    source: 'shigley-bolts',
    fields: defineFields([
      {
        key: 'share',
        label: 'Share of the proof load',
        kind: 'quantity',
        dimension: 'ratio',
        units: ['%', '%'],
        min: 0,
        max: 100,
      },
      { key: 'proof', label: 'Proof stress', kind: 'quantity', dimension: 'pressure', units: ['MPa', 'psi'], min: 0 },
      { key: 'area', label: 'Stress area', kind: 'quantity', dimension: 'area', units: ['mm2', 'in2'], min: 0 },
    ]),
    gives: { force: { label: 'Preload', units: kilo } },
    run: (i) => ({ force: preload(i.share, i.proof, i.area) }),
  }),
  thread: block({
    what: 'size, pitch and stress area of a coarse thread',
    source: 'iso-898-1',
    fields: defineFields([size]),
    gives: {
      diameter: { label: 'Size', units: ['mm', 'in'] },
      pitch: { label: 'Pitch', units: ['mm', 'in'] },
      area: { label: 'Stress area', units: ['mm2', 'in2'] },
    },
    run: (i) => ({ ...threadOf(i.size) }),
  }),
  'proof-load': block({
    what: 'proof stress and proof load of a bolt',
    source: 'iso-898-1',
    fields: defineFields([size, boltClass]),
    gives: { stress: { label: 'Proof stress', units: ['MPa', 'psi'] }, load: { label: 'Proof load', units: kilo } },
    run: (i) => {
      const stress = proofStress(i.size, i.boltClass);
      return { stress, load: stress * threadOf(i.size).area };
    },
  }),
  'stress-area': block({
    what: 'stress area from diameter and pitch',
    source: 'shigley-bolts',
    fields: defineFields([length('diameter', 'Bolt size'), length('pitch', 'Pitch')]),
    gives: { area: { label: 'Stress area', units: ['mm2', 'in2'] } },
    run: (i) => ({ area: stressArea(i.diameter, i.pitch) }),
  }),
  'torque-factor': block({
    what: 'torque factor from friction in thread and under head',
    source: 'jindal-bolts',
    fields: defineFields([
      length('diameter', 'Bolt size'),
      length('pitch', 'Pitch'),
      { key: 'thread', label: 'Friction in the thread', kind: 'number', min: 0, max: 1 },
      { key: 'head', label: 'Friction under the head', kind: 'number', min: 0, max: 1 },
    ]),
    gives: { factor: { label: 'Torque factor K' } },
    run: (i) => ({ factor: torqueFactor(i.diameter, i.pitch, i.thread, i.head) }),
  }),
  'strip-force': block({
    what: 'force that strips an internal thread out of a casting, and the thread a bolt needs not to',
    source: 'thread-shear',
    fields: defineFields([
      length('diameter', 'Bolt size'),
      length('engaged', 'Thread engaged'),
      {
        key: 'shear',
        label: 'Shear strength of the casting',
        kind: 'quantity',
        dimension: 'pressure',
        units: ['MPa', 'psi'],
        min: 0,
        above: true,
      },
      force,
    ]),
    gives: {
      strips: { label: 'Stripping force', units: kilo },
      needed: { label: 'Thread needed for that preload', units: ['mm', 'in'] },
    },
    run: (i) => {
      const strips = stripForce(i.diameter, i.engaged, i.shear);
      return { strips, needed: (i.engaged * i.force) / strips };
    },
  }),
  'inch-thread': block({
    what: 'size, pitch, stress area and proof load of a unified inch thread',
    source: 'ifi-torque-table',
    fields: defineFields([
      {
        key: 'size',
        label: 'Bolt',
        kind: 'choice',
        options: inchThreads.map(([value]) => ({ value, label: value })),
      },
      {
        key: 'grade',
        label: 'Grade',
        kind: 'choice',
        options: [
          { value: '5', label: '5' },
          { value: '8', label: '8' },
        ],
      },
    ]),
    gives: {
      diameter: { label: 'Size', units: ['mm', 'in'] },
      pitch: { label: 'Pitch', units: ['mm', 'in'] },
      area: { label: 'Stress area', units: ['mm2', 'in2'] },
      load: { label: 'Proof load', units: kilo },
    },
    run: (i) => {
      const thread = inchThreadOf(i.size);
      return { ...thread, load: thread.area * gradeProofStress(i.grade) };
    },
  }),
};
