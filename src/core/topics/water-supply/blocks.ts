import { block } from '../../contract/block.ts';
import { defineFields } from '../../contract/field.ts';
import * as c from './cut.ts';
import * as s from './slurry.ts';

const metres = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'quantity', dimension: 'length', units: ['m', 'ft'], min: 0 }) as const;
const mm = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'quantity', dimension: 'length', units: ['mm', 'in'], min: 0, above: true }) as const;
const litres = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'quantity', dimension: 'volume', units: ['L', 'gal'], min: 0 }) as const;
const time = {
  key: 'time',
  label: 'Time',
  kind: 'quantity',
  dimension: 'time',
  units: ['min', 'min'],
  min: 0,
  above: true,
} as const;
const volume = (label: string) => ({ label, units: ['L', 'gal'] }) as const;
const ph = { key: 'ph', label: 'pH', kind: 'number', min: 0, max: 14 } as const;
const yes = (b: boolean) => (b ? 'yes' : 'no');

export const blocks = {
  flow: block({
    what: 'flow by jug and watch',
    source: 'water-cut-arithmetic',
    fields: defineFields([litres('volume', 'Water'), { ...time, units: ['s', 's'] }]),
    gives: { flow: { label: 'Flow', units: ['L/min', 'gal/min'] } },
    run: (i) => ({ flow: c.flowOf(i.volume, i.time) }),
  }),
  'water-used': block({
    what: 'water for a time at a flow, and how long a tank lasts',
    source: 'water-cut-arithmetic',
    fields: defineFields([
      {
        key: 'flow',
        label: 'Flow',
        kind: 'quantity',
        dimension: 'flow',
        units: ['L/min', 'gal/min'],
        min: 0,
        above: true,
      },
      time,
      litres('tank', 'Tank'),
    ]),
    gives: { water: volume('Water'), lasts: { label: 'Tank lasts', units: ['min', 'min'] } },
    run: (i) => ({ water: i.flow * i.time, lasts: i.tank / i.flow }),
  }),
  stone: block({
    what: 'stone taken out by a cut',
    source: 'water-cut-arithmetic',
    fields: defineFields([
      metres('length', 'Length'),
      mm('depth', 'Depth'),
      mm('width', 'Blade width'),
      {
        key: 'density',
        label: 'Density',
        kind: 'quantity',
        dimension: 'density',
        units: ['kg/m3', 'kg/m3'],
        min: 0,
        default: 2400,
      },
    ]),
    gives: { stone: volume('Stone'), mass: { label: 'Weight', units: ['kg', 'lb'] } },
    run: (i) => {
      const stone = c.stoneOf(i.length, i.depth, i.width);
      return { stone, mass: stone * i.density };
    },
  }),
  'cut-time': block({
    what: 'cutting time by the area cut in an hour',
    source: 'water-cut-arithmetic',
    fields: defineFields([
      metres('length', 'Length'),
      mm('depth', 'Depth'),
      {
        key: 'rate',
        label: 'Area cut',
        kind: 'quantity',
        dimension: 'area-rate',
        units: ['m2/h', 'in·ft/min'],
        min: 0,
        above: true,
      },
    ]),
    gives: { area: { label: 'Area', units: ['m2', 'ft2'] }, time: { label: 'Time', units: ['min', 'min'] } },
    run: (i) => ({ area: i.length * i.depth, time: c.timeByRate(i.length, i.depth, i.rate) }),
  }),
  passes: block({
    what: 'passes to a depth, and the way the blade goes in all',
    source: 'water-cut-arithmetic',
    fields: defineFields([mm('depth', 'Depth'), mm('step', 'Depth of a pass'), metres('length', 'Length')]),
    gives: { passes: { label: 'Passes' }, way: { label: 'Way of the blade', units: ['m', 'ft'] } },
    run: (i) => {
      const passes = c.passes(i.depth, i.step);
      return { passes, way: passes * i.length };
    },
  }),
  ph: block({
    what: 'whether watery waste is corrosive hazardous waste in the USA, and inside one permit’s range',
    source: 'rcra-261-22',
    fields: defineFields([ph]),
    gives: { corrosive: { label: 'D002' }, permit: { label: 'Inside pH 6.5 to 8.5' } },
    run: (i) => ({ corrosive: yes(s.isCorrosive(i.ph)), permit: yes(s.withinPermit(i.ph)) }),
  }),
  thinning: block({
    what: 'times the water it would take to thin from one pH to another; never a way to get rid of slurry',
    source: 'arithmetic',
    fields: defineFields([ph, { ...ph, key: 'to', label: 'To' }]),
    gives: { times: { label: 'Times' } },
    run: (i) => ({ times: s.thinning(i.ph, i.to) }),
  }),
  'england-storage': block({
    what: 'whether slurry stored on a building site in England is inside RPS 235',
    source: 'ea-rps-235',
    fields: defineFields([
      { key: 'stored', label: 'Stored', kind: 'quantity', dimension: 'volume', units: ['m3', 'ft3'], min: 0 },
      metres('watercourse', 'Distance to a watercourse'),
      metres('site', 'Distance to a protected site'),
    ]),
    gives: { stored: { label: 'Amount' }, watercourse: { label: 'Watercourse' }, site: { label: 'Protected site' } },
    run: (i) => {
      const inside = s.englandStorage(i.stored, i.watercourse, i.site);
      return { stored: yes(inside.stored), watercourse: yes(inside.watercourse), site: yes(inside.site) };
    },
  }),
};
