/** The documented functions of the topic, each callable alone: geometry, tensions, checks. */
import { block } from '../../contract/block.ts';
import { defineFields } from '../../contract/field.ts';
import type { Problem } from '../../contract/result.ts';
import { isOver } from '../../thresholds/index.ts';
import {
  axialStiffness,
  deflectionForce,
  spanFrequency,
  stretch,
  tensionFromDeflection,
  tensionFromFrequency,
} from './checks.ts';
import { bearingLoads } from './consequences.ts';
import { arcFactor, arcPolynomial, tensionRatio, wedgedFriction } from './friction.ts';
import {
  beltLength,
  centreForLength,
  crossedLength,
  freeSpan,
  pulleys,
  shortestLength,
  textbookCentre,
  textbookLength,
  wrapSmall,
  type Pulleys,
} from './geometry.ts';
import { flexLife, flexPasses } from './life.ts';
import { grooveSize, pitchFromOutside, ribbedFace } from './pulley-size.ts';
import { deepestPush } from './reading.ts';
import { firstFit, runInWindow } from './setting.ts';
import { isRibbed, ribSections, vSections } from './tables.ts';
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

const none = { min: 0 } as const;

const diameters = [
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
const centre = {
  key: 'centre',
  label: 'Center distance',
  kind: 'quantity',
  dimension: 'length',
  units: ['mm', 'in'],
  min: 0,
  above: true,
} as const;
const wrap = {
  key: 'wrap',
  label: 'Wrap',
  kind: 'quantity',
  dimension: 'angle',
  units: ['°', '°'],
  min: 0,
  above: true,
} as const;
const friction = {
  key: 'friction',
  label: 'Friction of belt on pulley',
  kind: 'number',
  min: 0,
  above: true,
} as const;
const groove = {
  key: 'groove',
  label: 'Full groove angle (180° is flat)',
  kind: 'quantity',
  dimension: 'angle',
  units: ['°', '°'],
  default: 180,
  min: 5,
  max: 180,
} as const;
const mass = {
  key: 'mass',
  label: 'Mass of one belt, per meter',
  kind: 'quantity',
  dimension: 'linear-mass',
  units: ['kg/m', 'lb/ft'],
  default: 0,
  ...none,
} as const;
const speed = {
  key: 'speed',
  label: 'Belt speed',
  kind: 'quantity',
  dimension: 'speed',
  units: ['m/s', 'ft/min'],
  min: 0,
  above: true,
} as const;
const belts = { key: 'belts', label: 'Number of belts', kind: 'count', default: 1, min: 1 } as const;
const tension = {
  key: 'tension',
  label: 'Static tension of one strand',
  kind: 'quantity',
  dimension: 'force',
  units: ['N', 'lbf'],
  ...none,
} as const;
const span = {
  key: 'span',
  label: 'Free span',
  kind: 'quantity',
  dimension: 'length',
  units: ['mm', 'in'],
  min: 0,
  above: true,
} as const;
const bending = {
  key: 'bending',
  label: 'Bending stiffness',
  kind: 'quantity',
  dimension: 'bending-stiffness',
  units: ['N·m2', 'lbf·in2'],
  default: 0,
  ...none,
} as const;

const force = ['N', 'lbf'] as const;
const long = ['mm', 'in'] as const;

const angle = ['°', '°'] as const;
const named = <T extends string>(values: readonly T[]) => values.map((value) => ({ value, label: value }));

/** Two pulleys whose shafts stand no further apart than this overlap: C <= (D + d) / 2. */
function touching(p: Pulleys, centre: number): { readonly problem: Problem } | undefined {
  const least = (p.large + p.small) / 2;
  return isOver(centre, least) ? undefined : { problem: { field: 'centre', code: 'pulleys-touch', data: { least } } };
}

const geometryBlocks = {
  'belt-length': block({
    what: 'exact and textbook length, wraps and free span from two pulleys and their distance',
    source: 'shigley-belts',
    fields: defineFields([...diameters, centre]),
    gives: {
      length: { label: 'Exact length, open belt', units: long },
      textbook: { label: 'Textbook length, open belt', units: long },
      crossed: { label: 'Textbook length, crossed belt', units: long },
      wrapSmall: { label: 'Wrap on the small pulley', units: angle },
      wrapLarge: { label: 'Wrap on the large pulley', units: angle },
      span: { label: 'Free span', units: long },
    },
    run: (i) => {
      const p = pulleys(i.small, i.large);
      const touch = touching(p, i.centre);
      if (touch) return touch;
      const wrap = wrapSmall(p, i.centre);
      return {
        length: beltLength(p, i.centre),
        textbook: textbookLength(p, i.centre),
        crossed: crossedLength(p, i.centre),
        wrapSmall: wrap,
        wrapLarge: 2 * Math.PI - wrap,
        span: freeSpan(p, i.centre),
      };
    },
  }),
  wrap: block({
    what: 'wrap from how much the pulleys differ against their distance',
    source: 'machinery-handbook-arc',
    fields: defineFields([{ key: 'difference', label: '(D − d) / C', kind: 'number', min: 0, max: 2 }]),
    gives: { wrap: { label: 'Wrap on the small pulley', units: angle } },
    run: (i) => ({ wrap: Math.PI - 2 * Math.asin(i.difference / 2) }),
  }),
  'centre-from-length': block({
    what: 'center distance for a belt length, exact and by the textbook',
    source: 'wentzell-design',
    fields: defineFields([
      ...diameters,
      {
        key: 'length',
        label: 'Belt length',
        kind: 'quantity',
        dimension: 'length',
        units: ['mm', 'in'],
        min: 0,
        above: true,
      },
    ]),
    gives: {
      centre: { label: 'Center distance', units: long },
      textbook: { label: 'Textbook center distance', units: long },
      wrapSmall: { label: 'Wrap on the small pulley', units: angle },
    },
    run: (i) => {
      const p = pulleys(i.small, i.large);
      const exact = centreForLength(p, i.length);
      if (exact === undefined)
        return { problem: { field: 'length', code: 'belt-too-short', data: { least: shortestLength(p) } } };
      return { centre: exact, textbook: textbookCentre(p, i.length), wrapSmall: wrapSmall(p, exact) };
    },
  }),
  span: block({
    what: 'free span between two pulleys',
    source: 'geometry',
    fields: defineFields([...diameters, centre]),
    gives: { span: { label: 'Free span', units: long } },
    run: (i) => {
      const p = pulleys(i.small, i.large);
      return touching(p, i.centre) ?? { span: freeSpan(p, i.centre) };
    },
  }),
  'groove-geometry': block({
    what: 'outside and root diameter, width and groove angle of a V pulley',
    source: 'din-2211-grooves',
    fields: defineFields([
      { key: 'section', label: 'Section', kind: 'choice', options: named(vSections) },
      {
        key: 'pitch',
        label: 'Pitch diameter',
        kind: 'quantity',
        dimension: 'length',
        units: ['mm', 'in'],
        min: 0,
        above: true,
      },
      { key: 'grooves', label: 'Grooves', kind: 'count', default: 1, min: 1 },
    ]),
    gives: {
      outside: { label: 'Outside diameter', units: long },
      root: { label: 'Root diameter', units: long },
      face: { label: 'Width', units: long },
      angle: { label: 'Groove angle', units: angle },
    },
    run: (i) => ({ ...grooveSize(i.section, i.pitch, i.grooves) }),
  }),
  'ribbed-face': block({
    what: 'least width of a ribbed pulley',
    source: 'iso-9982',
    fields: defineFields([
      { key: 'section', label: 'Section', kind: 'choice', options: named(ribSections) },
      { key: 'ribs', label: 'Ribs', kind: 'count', min: 1 },
    ]),
    gives: { face: { label: 'Width', units: long } },
    run: (i) => ({ face: ribbedFace(i.section, i.ribs) }),
  }),
  'pitch-diameter': block({
    what: 'pitch (datum or effective) diameter from the outside diameter',
    source: 'din-2211-grooves',
    fields: defineFields([
      { key: 'section', label: 'Section', kind: 'choice', options: named([...vSections, ...ribSections]) },
      {
        key: 'outside',
        label: 'Outside diameter',
        kind: 'quantity',
        dimension: 'length',
        units: ['mm', 'in'],
        min: 0,
        above: true,
      },
    ]),
    gives: { pitch: { label: 'Pitch diameter', units: long }, standard: { label: 'From' } },
    run: (i) => ({
      pitch: pitchFromOutside(i.section, i.outside),
      standard: isRibbed(i.section) ? 'ISO 9982' : 'DIN 2211',
    }),
  }),
};

const power = ['kW', 'hp'] as const;
const metres = ['m/s', 'ft/min'] as const;
/** Generic in the key so that the block's inputs keep their names. */
const newton = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'quantity', dimension: 'force', units: ['N', 'lbf'], min: 0 }) as const;
const factor = { key: 'factor', label: 'Arc factor', kind: 'number', min: 0, above: true, max: 1.249999 } as const;

const tensionBlocks = {
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
    fields: defineFields([{ ...wrap, max: 360 }]),
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

const down = {
  key: 'deflection',
  label: 'Pushed down by',
  kind: 'quantity',
  dimension: 'length',
  units: ['mm', 'in'],
  min: 0,
  above: true,
} as const;
const extra = {
  key: 'extra',
  label: 'Stiffness allowance',
  kind: 'quantity',
  dimension: 'force',
  units: ['N', 'lbf'],
  default: 0,
  min: 0,
} as const;
const weighed = { ...mass, default: undefined, above: true } as const;
const apart = {
  key: 'apart',
  label: 'Distance between the marks',
  kind: 'quantity',
  dimension: 'length',
  units: ['mm', 'in'],
  min: 0,
  above: true,
} as const;

function tooDeep(deflection: number, span: number): { readonly problem: Problem } | undefined {
  const most = span * deepestPush;
  return isOver(deflection, most)
    ? { problem: { field: 'deflection', code: 'pushed-too-far', data: { most } } }
    : undefined;
}

const checkBlocks = {
  'deflection-force': block({
    what: 'force that pushes the middle of a span down',
    source: 'bloch-geitner-v4',
    fields: defineFields([tension, span, down, extra]),
    gives: { force: { label: 'Force', units: force } },
    run: (i) => tooDeep(i.deflection, i.span) ?? { force: deflectionForce(i.tension, i.deflection, i.span, i.extra) },
  }),
  'deflection-window': block({
    what: 'least, greatest and first-fit force at 1/64 of the span, as printed (tension over 16)',
    source: 'bloch-geitner-v4',
    fields: defineFields([tension, extra]),
    gives: {
      least: { label: 'Least force', units: force },
      greatest: { label: 'Greatest force', units: force },
      firstFit: { label: 'Force for a new belt', units: force },
    },
    run: (i) => {
      const greatest = (runInWindow[1] * i.tension + i.extra) / 16;
      return { least: (i.tension + i.extra) / 16, greatest, firstFit: firstFit * greatest };
    },
  }),
  'tension-from-force': block({
    what: 'tension from the force at mid-span',
    source: 'bloch-geitner-v4',
    fields: defineFields([
      { key: 'force', label: 'Force', kind: 'quantity', dimension: 'force', units: ['N', 'lbf'], min: 0 },
      span,
      down,
      extra,
    ]),
    gives: { tension: { label: 'Tension', units: force } },
    run: (i) =>
      tooDeep(i.deflection, i.span) ?? { tension: tensionFromDeflection(i.force, i.deflection, i.span, i.extra) },
  }),
  'span-frequency': block({
    what: 'note of a plucked span',
    source: 'blevins-modes',
    fields: defineFields([tension, weighed, span, bending]),
    gives: { frequency: { label: 'Frequency', units: ['Hz', 'Hz'] } },
    run: (i) => ({ frequency: spanFrequency(i.tension, i.mass, i.span, i.bending) }),
  }),
  'tension-from-frequency': block({
    what: 'tension from the note of a plucked span',
    source: 'blevins-modes',
    fields: defineFields([
      { key: 'frequency', label: 'Frequency', kind: 'quantity', dimension: 'frequency', units: ['Hz', 'Hz'], min: 0 },
      weighed,
      span,
      bending,
    ]),
    gives: { tension: { label: 'Tension', units: force } },
    run: (i) => {
      const t = tensionFromFrequency(i.frequency, i.mass, i.span, i.bending);
      return t < 0 ? { problem: { field: 'bending', code: 'stiffer-than-note' } } : { tension: t };
    },
  }),
  stretch: block({
    what: 'how far two marks on a belt move apart',
    source: 'geometry',
    fields: defineFields([
      tension,
      apart,
      {
        key: 'axial',
        label: 'Pull that would double its length',
        kind: 'quantity',
        dimension: 'force',
        units: ['kN', 'lbf'],
        min: 0,
        above: true,
      },
    ]),
    gives: { stretch: { label: 'Marks move apart by', units: long } },
    run: (i) => ({ stretch: stretch(i.tension, i.apart, i.axial) }),
  }),
  'axial-stiffness': block({
    what: 'stretch stiffness of one belt or rib, from a weight hung on the belt',
    source: 'geometry',
    fields: defineFields([
      {
        key: 'force',
        label: 'Pull on the cut belt',
        kind: 'quantity',
        dimension: 'force',
        units: ['N', 'lbf'],
        min: 0,
        above: true,
      },
      apart,
      {
        key: 'growth',
        label: 'The marks moved apart by',
        kind: 'quantity',
        dimension: 'length',
        units: ['mm', 'in'],
        min: 0,
        above: true,
      },
      { key: 'ribs', label: 'Ribs that shared the pull', kind: 'count', default: 1, min: 1 },
    ]),
    gives: { axial: { label: 'Pull that would double the length of one rib', units: ['kN', 'lbf'] } },
    run: (i) => ({ axial: axialStiffness(i.force, i.apart, i.growth) / i.ribs }),
  }),
};

export const blocks = { ...geometryBlocks, ...tensionBlocks, ...checkBlocks };
