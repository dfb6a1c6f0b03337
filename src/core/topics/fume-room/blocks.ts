import { block } from '../../contract/block.ts';
import { defineFields } from '../../contract/field.ts';
import { dayAverage } from '../../exposure/index.ts';
import * as r from './room.ts';

const air = {
  key: 'volume',
  label: 'Air in the room',
  kind: 'quantity',
  dimension: 'volume',
  units: ['m3', 'ft3'],
  min: 0,
  above: true,
} as const;
const changes = {
  key: 'changes',
  label: 'Air changes',
  kind: 'quantity',
  dimension: 'air-change',
  units: ['1/h', '1/h'],
  min: 0,
} as const;
const flow = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'quantity', dimension: 'flow', units: ['m3/h', 'ft3/min'], min: 0 }) as const;
const ppm = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'quantity', dimension: 'ratio', units: ['ppm', 'ppm'], min: 0 }) as const;
const time = {
  key: 'time',
  label: 'Time',
  kind: 'quantity',
  dimension: 'time',
  units: ['min', 'min'],
  min: 0,
} as const;
const level = (label: string) => ({ label, units: ['ppm', 'ppm'] }) as const;
const minutes = (label: string) => ({ label, units: ['min', 'min'] }) as const;
const given = <K extends string>(key: K, value: number | undefined) =>
  value === undefined ? {} : ({ [key]: value } as Record<K, number>);

export const blocks = {
  room: block({
    what: 'carbon monoxide in a mixed room: after a time, on average, in the end, and the time to a level',
    source: 'well-mixed-room',
    fields: defineFields([
      air,
      changes,
      flow('source', 'Given off'),
      time,
      ppm('level', 'Level'),
      { ...ppm('start', 'At the start'), default: 0 },
    ]),
    gives: {
      after: level('After the time'),
      mean: level('On average'),
      steady: level('In the end'),
      reach: minutes('To the level'),
    },
    run: (i) => ({
      after: r.concentrationAt(i, i.source, i.time, i.start),
      mean: r.meanOver(i, i.source, i.time, i.start),
      ...given('steady', r.steadyConcentration(i, i.source)),
      ...given('reach', r.timeTo(i, i.source, i.level, i.start)),
    }),
  }),
  thin: block({
    what: 'time for the air to thin out once nothing gives off any more',
    source: 'well-mixed-room',
    fields: defineFields([changes, ppm('start', 'Now'), { ...ppm('level', 'Wanted'), above: true }]),
    gives: { time: minutes('Time') },
    run: (i) => given('time', r.timeToThin({ volume: 1, changes: i.changes }, i.start, i.level)),
  }),
  changes: block({
    what: 'air changes of a fan, and the fan for a level',
    source: 'well-mixed-room',
    fields: defineFields([
      air,
      flow('fan', 'Fan'),
      flow('source', 'Given off'),
      { ...ppm('level', 'Level'), above: true },
    ]),
    gives: {
      changes: { label: 'Air changes', units: ['1/h', '1/h'] },
      fan: { label: 'Fan for the level', units: ['m3/h', 'ft3/min'] },
      changesFor: { label: 'Air changes for the level', units: ['1/h', '1/h'] },
    },
    run: (i) => {
      const fan = r.airFor(i.source, i.level);
      return { changes: i.fan / i.volume, fan, changesFor: fan / i.volume };
    },
  }),
  engine: block({
    what: 'carbon monoxide an engine gives off',
    source: 'epa-co-ceilings',
    fields: defineFields([
      {
        key: 'emission',
        label: 'For the work done',
        kind: 'quantity',
        dimension: 'emission',
        units: ['g/kWh', 'g/kWh'],
        min: 0,
      },
      { key: 'power', label: 'Power', kind: 'quantity', dimension: 'power', units: ['kW', 'hp'], min: 0 },
    ]),
    gives: { mass: { label: 'Weight', units: ['g/h', 'g/h'] }, flow: { label: 'Gas', units: ['m3/h', 'ft3/min'] } },
    run: (i) => ({ mass: i.emission * i.power, flow: r.sourceOf(i.emission, i.power) }),
  }),
  weight: block({
    what: 'weight of carbon monoxide in a cubic meter of air at 25 °C',
    source: 'co-density',
    fields: defineFields([ppm('level', 'Level')]),
    gives: { mass: { label: 'Weight', units: ['mg/m3', 'mg/m3'] } },
    run: (i) => ({ mass: i.level * r.density }),
  }),
  average: block({
    what: 'average of a day over 8 h',
    source: 'osha-1910-1000-d',
    fields: defineFields([
      {
        key: 'spells',
        label: 'Spells',
        kind: 'rows',
        minRows: 1,
        maxRows: 50,
        columns: [ppm('concentration', 'Level'), time],
      },
    ]),
    gives: { average: level('Average') },
    run: (i) => ({ average: dayAverage(i.spells) }),
  }),
};
