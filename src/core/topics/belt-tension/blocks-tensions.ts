import { block } from '../../contract/block.ts';
import { defineFields } from '../../contract/field.ts';
import { bearingLoads } from './bearing-loads.ts';
import { arcFactor, arcPolynomial, tensionRatio, wedgedFriction } from './friction.ts';
import { flexLife, flexPasses } from './life.ts';
import {
  bestSpeed,
  centrifugal,
  pullAtStrength,
  pullBeforeSlip,
  shaftLoadRunning,
  shaftLoadStatic,
  staticByCapstan,
  staticByTrade,
  strandsAtSlip,
} from './tensions.ts';
import { belts, force, friction, groove, mass, speed, tension, wrap } from './block-fields.ts';

const power = ['kW', 'hp'] as const;
const metres = ['m/s', 'ft/min'] as const;
/** Generic in the key so that the block's inputs keep their names. */
const newton = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'quantity', dimension: 'force', units: ['N', 'lbf'], min: 0 }) as const;
const factor = { key: 'factor', label: 'Arc factor', kind: 'number', min: 0, above: true, max: 1.249999 } as const;

export const tensionBlocks = {
  'capstan-ratio': block({
    what: 'tight to slack ratio at slip, flat or wedged',
    source: 'khurmi-machines',
    fields: defineFields([friction, groove, wrap, { ...newton('load', 'Tight side'), optional: true }]),
    gives: {
      effective: { label: 'Friction with the wedge' },
      ratio: { label: 'Ratio' },
      hold: { label: 'Slack side that holds it', units: force },
      difference: { label: 'Effective pull', units: force },
    },
    run: (i) => {
      const f = wedgedFriction(i.friction, i.groove);
      const ratio = tensionRatio(f, i.wrap);
      return {
        effective: f,
        ratio,
        hold: i.load === undefined ? undefined : i.load / ratio,
        difference: i.load === undefined ? undefined : i.load * (1 - 1 / ratio),
      };
    },
  }),
  'arc-factor': block({
    what: 'arc factor by the capstan law, and by the textbook polynomial',
    source: 'machinery-handbook-arc',
    fields: defineFields([wrap]),
    gives: { factor: { label: 'Arc factor' }, polynomial: { label: 'Arc factor, polynomial' } },
    run: (i) => ({ factor: arcFactor(i.wrap), polynomial: arcPolynomial(i.wrap) }),
  }),
  'power-at-strength': block({
    what: 'power when the strength of the belt is the limit, and the best belt speed',
    source: 'khurmi-machines',
    fields: defineFields([
      newton('most', 'Greatest tension allowed in the belt'),
      mass,
      friction,
      groove,
      wrap,
      { ...speed, optional: true },
      belts,
    ]),
    gives: {
      pull: { label: 'Effective pull', units: force },
      power: { label: 'Power', units: power },
      meanWorking: { label: 'Mean of the working tensions', units: force },
      static: { label: 'Static tension', units: force },
      bestSpeed: { label: 'Best belt speed', units: metres },
      bestPower: { label: 'Power at that speed', units: power },
    },
    run: (i) => {
      const ratio = tensionRatio(wedgedFriction(i.friction, i.groove), i.wrap);
      const best = i.mass > 0 ? bestSpeed(i.most, i.mass) : undefined;
      const bestPower = best === undefined ? undefined : i.belts * best * pullAtStrength(i.most, ratio, i.most / 3);
      if (i.speed === undefined) return { bestSpeed: best, bestPower };
      const own = centrifugal(i.mass, i.speed);
      if (own >= i.most) return { problem: { field: 'speed', code: 'belt-flies-off' } };
      const pull = pullAtStrength(i.most, ratio, own);
      return {
        pull: i.belts * pull,
        power: i.belts * pull * i.speed,
        meanWorking: staticByCapstan(pull, ratio, 0),
        static: staticByCapstan(pull, ratio, own),
        bestSpeed: best,
        bestPower,
      };
    },
  }),
  'power-from-static': block({
    what: 'power a belt set to a static tension gives before it slips',
    source: 'bevan-machines',
    fields: defineFields([tension, mass, friction, groove, wrap, speed, belts]),
    gives: {
      pull: { label: 'Effective pull', units: force },
      power: { label: 'Power', units: power },
      bestSpeed: { label: 'Best belt speed', units: metres },
    },
    run: (i) => {
      const ratio = tensionRatio(wedgedFriction(i.friction, i.groove), i.wrap);
      const pull = i.belts * pullBeforeSlip(i.tension, ratio, centrifugal(i.mass, i.speed));
      return { pull, power: pull * i.speed, bestSpeed: i.mass > 0 ? bestSpeed(i.tension, i.mass) : undefined };
    },
  }),
  strands: block({
    what: 'working tensions and tensions in the belt, at the point of slip',
    source: 'shigley-belts',
    fields: defineFields([
      newton('pull', 'Effective pull of one belt'),
      { key: 'ratio', label: 'Tight to slack ratio', kind: 'number', min: 1, above: true },
      { ...newton('centrifugal', 'Centrifugal tension'), default: 0 },
    ]),
    gives: {
      tightWorking: { label: 'Tight side, working', units: force },
      slackWorking: { label: 'Slack side, working', units: force },
      tightInBelt: { label: 'Tight side, in the belt', units: force },
      slackInBelt: { label: 'Slack side, in the belt', units: force },
      meanWorking: { label: 'Mean of the working tensions', units: force },
      static: { label: 'Static tension', units: force },
    },
    run: (i) => ({
      ...strandsAtSlip(i.pull, i.ratio, i.centrifugal),
      meanWorking: staticByCapstan(i.pull, i.ratio, 0),
      static: staticByCapstan(i.pull, i.ratio, i.centrifugal),
    }),
  }),
  'static-tension': block({
    what: 'static tension of one belt by the trade formula',
    source: 'gb-t-13575-1',
    fields: defineFields([
      { key: 'power', label: 'Design power', kind: 'quantity', dimension: 'power', units: ['kW', 'hp'], min: 0 },
      belts,
      speed,
      factor,
      mass,
    ]),
    gives: { static: { label: 'Static tension', units: force } },
    run: (i) => ({ static: staticByTrade(i.power, i.belts, i.speed, i.factor, i.mass) }),
  }),
  'shaft-load': block({
    what: 'pull on the shaft, at rest or running',
    source: 'gb-t-13575-1',
    fields: defineFields([
      { ...tension, optional: true },
      { ...newton('tight', 'Tight side, working'), optional: true },
      { ...newton('slack', 'Slack side, working'), optional: true },
      belts,
      wrap,
    ]),
    gives: { rest: { label: 'At rest', units: force }, running: { label: 'Running', units: force } },
    run: (i) => ({
      rest: i.tension === undefined ? undefined : shaftLoadStatic(i.tension, i.belts, i.wrap),
      running:
        i.tight === undefined || i.slack === undefined
          ? undefined
          : shaftLoadRunning(i.tight, i.slack, i.belts, i.wrap),
    }),
  }),
  'bearing-loads': block({
    what: 'loads on the two bearings of a shaft with an overhung pulley',
    source: 'arithmetic',
    fields: defineFields([
      newton('pull', 'Pull on the shaft'),
      { key: 'overhang', label: 'Overhang', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], min: 0 },
      {
        key: 'apart',
        label: 'Between the bearings',
        kind: 'quantity',
        dimension: 'length',
        units: ['mm', 'in'],
        min: 0,
        above: true,
      },
    ]),
    gives: {
      near: { label: 'Near bearing', units: force },
      far: { label: 'Far bearing, the other way', units: force },
    },
    run: (i) => ({ ...bearingLoads(i.pull, i.overhang, i.apart) }),
  }),
  'flex-life': block({
    what: 'passes and hours a V belt stands, from its two peak tensions',
    source: 'shigley-belt-life',
    fields: defineFields([
      newton('limit', 'K of the section'),
      { key: 'exponent', label: 'b of the section', kind: 'number', min: 1, max: 40, default: 10.93 },
      { ...newton('peakSmall', 'Peak tension on one pulley'), above: true },
      { ...newton('peakLarge', 'Peak tension on the other'), above: true },
      {
        key: 'length',
        label: 'Belt length',
        kind: 'quantity',
        dimension: 'length',
        units: ['mm', 'in'],
        min: 0,
        above: true,
      },
      speed,
    ]),
    gives: {
      passes: { label: 'Passes' },
      life: { label: 'Life', units: ['h', 'h'] },
      cappedLife: { label: 'Life, counting no more than a thousand million passes', units: ['h', 'h'] },
    },
    run: (i) => {
      const passes = flexPasses(i.limit, i.exponent, i.peakSmall, i.peakLarge);
      return {
        passes,
        life: flexLife(passes, i.length, i.speed),
        cappedLife: flexLife(Math.min(passes, 1e9), i.length, i.speed),
      };
    },
  }),
};
