import { block } from '../../contract/block.ts';
import { defineFields } from '../../contract/field.ts';
import { climb, pitchRadius, runOut, tilt, turnsForLoop } from './climb.ts';

const angle = {
  key: 'angle',
  label: 'Angle of the V',
  kind: 'quantity',
  dimension: 'angle',
  units: ['°', '°'],
  min: 1,
  max: 179,
} as const;
const length = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'quantity', dimension: 'length', units: ['mm', 'in'], min: 0 }) as const;
const long = ['mm', 'in'] as const;

export const blocks = {
  climb: block({
    what: 'how far a belt climbs when the halves close',
    source: 'geometry',
    fields: defineFields([length('gap', 'Gap closed'), angle]),
    gives: {
      radius: { label: 'Gain of pitch radius', units: long },
      diameter: { label: 'Gain of pitch diameter', units: long },
    },
    run: (i) => ({ radius: climb(i.gap, i.angle), diameter: 2 * climb(i.gap, i.angle) }),
  }),
  state: block({
    what: 'pitch radius at a gap, for a belt of any width',
    source: 'geometry',
    fields: defineFields([
      length('closed', 'Pitch radius, closed'),
      angle,
      length('gap', 'Gap'),
      length('nominal', 'Width made for'),
      length('belt', 'Width of the belt'),
    ]),
    gives: { radius: { label: 'Pitch radius', units: long } },
    run: (i) => ({ radius: pitchRadius(i, i.gap) }),
  }),
  loop: block({
    what: 'turns of the pulley that carry the belt round once',
    source: 'geometry',
    fields: defineFields([length('length', 'Belt length'), { ...length('radius', 'Pitch radius'), above: true }]),
    gives: { turns: { label: 'Turns' } },
    run: (i) => ({ turns: turnsForLoop(i.length, i.radius) }),
  }),
  'run-out': block({
    what: 'run-out at the rim of a blade on a tilted half',
    source: 'geometry',
    fields: defineFields([
      length('gap', 'Gap left on one side'),
      { ...length('diameter', 'Across'), above: true },
      length('blade', 'Blade diameter'),
    ]),
    gives: { tilt: { label: 'Tilt', units: ['°', '°'] }, runOut: { label: 'Run-out', units: long } },
    run: (i) => ({ tilt: tilt(i.gap, i.diameter), runOut: runOut(i.blade, tilt(i.gap, i.diameter)) }),
  }),
};
