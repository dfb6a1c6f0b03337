import { block } from '../../contract/block.ts';
import { defineFields } from '../../contract/field.ts';
import { cleanliness, levels } from './contamination.ts';
import { equivalentLoad, loadFactors } from './equivalent.ts';
import { basicLife, basicRevolutions, fatigueLimit, lifeFactor, ratingNeeded, referenceViscosity } from './life.ts';
import { ratingForReliability, reliabilityOf } from './reliability.ts';

const kilo = ['kN', 'lbf'] as const;
const load = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'quantity', dimension: 'force', units: kilo, min: 0, above: true }) as const;
const number = <const K extends string>(key: K, label: string) => ({ key, label, kind: 'number', min: 0 }) as const;
const pitch = {
  key: 'pitch',
  label: 'Mean diameter',
  kind: 'quantity',
  dimension: 'length',
  units: ['mm', 'in'],
  min: 0,
  above: true,
} as const;
const speed = {
  key: 'speed',
  label: 'Speed',
  kind: 'quantity',
  dimension: 'rotation',
  units: ['rpm', 'rpm'],
  min: 0,
  above: true,
} as const;
const axial = {
  key: 'axial',
  label: 'Push along the shaft',
  kind: 'quantity',
  dimension: 'force',
  units: kilo,
  min: 0,
} as const;
const service = { ...number('service', 'Service factor'), default: 1, above: true } as const;
const rolling = {
  key: 'rolling',
  label: 'What rolls',
  kind: 'choice',
  default: 'ball',
  options: [
    { value: 'ball', label: 'Balls' },
    { value: 'roller', label: 'Rollers' },
  ],
} as const;
const multiple = { ...number('millions', 'Life in millions of revolutions'), above: true } as const;

export const blocks = {
  'basic-life': block({
    what: 'basic rating life of a ball or roller bearing',
    source: 'iso-281',
    fields: defineFields([
      load('dynamicRating', 'Dynamic load rating'),
      load('load', 'Equivalent load'),
      { ...speed, optional: true },
      rolling,
    ]),
    gives: { millions: { label: 'Millions of revolutions' }, life: { label: 'Basic life', units: ['h', 'h'] } },
    run: (i) => ({
      millions: basicRevolutions(i.dynamicRating, i.load, i.rolling) / 1e6,
      life: i.speed === undefined ? undefined : basicLife(i.dynamicRating, i.load, i.speed, i.rolling),
    }),
  }),
  'rating-needed': block({
    what: 'dynamic rating that gives a life under a load',
    source: 'iso-281',
    fields: defineFields([load('load', 'Equivalent load'), multiple, rolling]),
    gives: { rating: { label: 'Dynamic load rating', units: kilo } },
    run: (i) => ({ rating: ratingNeeded(i.load, i.millions * 1e6, i.rolling) }),
  }),
  equivalent: block({
    what: 'equivalent load from radial and axial load, factors given',
    source: 'shigley-ratings',
    fields: defineFields([
      load('radial', 'Radial load'),
      axial,
      number('X', 'Radial factor X'),
      number('Y', 'Axial factor Y'),
      { ...number('V', 'Rotation factor V'), default: 1 },
    ]),
    gives: { load: { label: 'Equivalent load', units: kilo } },
    run: (i) => ({ load: equivalentLoad(i.radial, i.axial, i) }),
  }),
  'load-factors': block({
    what: 'X, Y and e of a deep-groove ball bearing',
    source: 'shigley-ratings',
    fields: defineFields([
      load('radial', 'Radial load'),
      axial,
      load('staticRating', 'Static load rating'),
      { key: 'outerTurns', label: 'The outer ring turns', kind: 'yes-no', default: false },
    ]),
    gives: {
      X: { label: 'X' },
      Y: { label: 'Y' },
      V: { label: 'V' },
      e: { label: 'e' },
      load: { label: 'Equivalent load', units: kilo },
    },
    run: (i) => {
      const f = loadFactors(i.radial, i.axial, i.staticRating, i.outerTurns);
      return { ...f, load: equivalentLoad(i.radial, i.axial, f) };
    },
  }),
  'reference-viscosity': block({
    what: 'viscosity a bearing wants at its speed',
    source: 'iso-281',
    fields: defineFields([speed, pitch]),
    gives: { viscosity: { label: 'Viscosity', units: ['mm2/s', 'mm2/s'] } },
    run: (i) => ({ viscosity: referenceViscosity(i.speed, i.pitch) }),
  }),
  'life-factor': block({
    what: 'life factor from viscosity ratio and cleanliness',
    source: 'iso-281',
    fields: defineFields([
      number('kappa', 'Viscosity ratio'),
      number('clean', 'Cleanliness times fatigue limit over load'),
    ]),
    gives: { factor: { label: 'Life factor' } },
    run: (i) => {
      const factor = lifeFactor(i.kappa, i.clean);
      return factor === undefined
        ? { problem: { field: 'kappa', code: 'kappa-too-small', data: { got: i.kappa } } }
        : { factor };
    },
  }),
  cleanliness: block({
    what: 'cleanliness factor from clean to slurry',
    source: 'iso-281-contamination',
    fields: defineFields([
      {
        key: 'dirt',
        label: 'What gets in',
        kind: 'choice',
        options: levels.map(({ value, label }) => ({ value, label })),
      },
      pitch,
    ]),
    gives: { low: { label: 'Low' }, high: { label: 'High' } },
    run: (i) => {
      const [low, high] = cleanliness(i.dirt, i.pitch);
      return { low, high };
    },
  }),
  'fatigue-limit': block({
    what: 'fatigue load limit from the static rating',
    source: 'iso-281',
    fields: defineFields([load('staticRating', 'Static load rating'), pitch]),
    gives: { limit: { label: 'Fatigue load limit', units: ['N', 'lbf'] } },
    run: (i) => ({ limit: fatigueLimit(i.staticRating, i.pitch) }),
  }),
  'rating-for-reliability': block({
    what: 'catalogue rating for a reliability other than nine in ten',
    source: 'shigley-ratings',
    fields: defineFields([
      load('load', 'Load'),
      service,
      multiple,
      { key: 'reliability', label: 'Reliability', kind: 'number', min: 0.01, max: 0.9999 },
    ]),
    gives: { rating: { label: 'Rating', units: kilo } },
    run: (i) => ({ rating: ratingForReliability(i.load, i.service, i.millions, i.reliability) }),
  }),
  reliability: block({
    what: 'reliability a rating gives',
    source: 'shigley-ratings',
    fields: defineFields([load('rating', 'Rating'), load('load', 'Load'), service, multiple]),
    gives: { reliability: { label: 'Reliability' } },
    run: (i) => ({ reliability: reliabilityOf(i.rating, i.load, i.service, i.millions) }),
  }),
};
