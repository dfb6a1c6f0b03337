/** From what was typed to the drive itself: pitch diameters, centers, length, wraps and belt speed, and the same as values. */
import type { InputsOf } from '../../contract/field.ts';
import { step } from '../../contract/formula.ts';
import type { Problem, Value } from '../../contract/result.ts';
import type { Worked } from '../../contract/worked.ts';
import { isOver, isUnder } from '../../thresholds/index.ts';
import type { fields } from './fields.ts';
import * as f from './formulas.ts';
import { beltLength, centreForLength, freeSpan, pulleys, shortestLength, wrapSmall, type Pulleys } from './geometry.ts';
import { grooveSize, outsideMinusPitch, ribbedFace } from './pulley-size.ts';
import { beltMass, isRibbed, leastPulley, pushExtra } from './tables.ts';

export type BeltInputs = InputsOf<typeof fields>;

/** The drive with pitch diameters, SI: lengths in m, speeds in m/s and 1/s, angles in rad, masses in kg/m, forces in N. */
export interface Drive extends Pulleys {
  readonly engine: number;
  readonly blade: number;
  readonly centre: number;
  readonly length: number;
  readonly span: number;
  readonly wrap: number;
  readonly speed: number;
  readonly engineRotation: number;
  readonly bladeRotation: number;
  readonly belts: number;
  /** Ribs that are pushed, plucked and marked as one: all of a ribbed belt, one of a V belt. */
  readonly together: number;
  readonly mass: number;
  readonly massLow: number;
  readonly massHigh: number;
  /** Source id of the mass where it was not weighed. */
  readonly massSource: string | undefined;
  /** Stiffness allowance of the push check. */
  readonly extra: number;
  readonly deflection: number;
  readonly tooSmall: boolean;
}

/** The push check's two customs: a share of the span. Source: bloch-geitner-v4 (1/64); common-practice (16 mm for each meter). */
const pushShares = { '64': 1 / 64, '16mm': 0.016 } as const;

/**
 * The drive from what was typed: pitch diameters, centers, length, span, wraps, speeds and the belt's data.
 * @returns the drive with its working, or the problem that keeps a belt from going round
 */
export function solveDrive(i: BeltInputs): Worked<Drive> | Problem {
  const [ofEngine, ofBlade] = [pitchOf(i, i.enginePulley), pitchOf(i, i.bladePulley)];
  const [engine, blade] = [ofEngine.value, ofBlade.value];
  const p = pulleys(engine, blade);
  const least = (p.small + p.large) / 2;
  if (!(p.small > 0))
    return { field: i.enginePulley < i.bladePulley ? 'enginePulley' : 'bladePulley', code: 'no-pitch-diameter' };
  if (i.known === 'centre' && !isOver(i.centre ?? 0, least))
    return { field: 'centre', code: 'pulleys-touch', data: { least } };
  const centre = i.known === 'centre' ? (i.centre ?? 0) : centreForLength(p, i.length ?? 0);
  if (centre === undefined) return { field: 'length', code: 'belt-too-short', data: { least: shortestLength(p) } };

  const theta = wrapSmall(p, centre);
  const length = beltLength(p, centre);
  const span = freeSpan(p, centre);
  const engineKnown = i.speedOf === 'engine';
  const known = engineKnown ? engine : blade;
  const speed = Math.PI * known * i.rotation;
  const steps = [
    ...ofEngine.steps,
    ...ofBlade.steps,
    step(f.wrap, { D: p.large, d: p.small, C: centre }, theta),
    step(f.length, { C: centre, D: p.large, d: p.small, theta_D: 2 * Math.PI - theta, theta }, length),
    step(f.span, { C: centre, D: p.large, d: p.small }, span),
    step(f.speed, { d_n: known, n: i.rotation }, speed),
  ];

  const printed = beltMass(i.section);
  const value: Drive = {
    ...p,
    engine,
    blade,
    centre,
    length,
    span,
    wrap: theta,
    speed,
    engineRotation: engineKnown ? i.rotation : (i.rotation * blade) / engine,
    bladeRotation: engineKnown ? (i.rotation * engine) / blade : i.rotation,
    belts: i.belts,
    together: isRibbed(i.section) ? i.belts : 1,
    mass: i.mass ?? printed.value,
    massLow: i.mass ?? printed.low,
    massHigh: i.mass ?? printed.high,
    massSource: i.mass === undefined ? printed.source : undefined,
    extra: i.pushExtra ?? pushExtra(i.section),
    deflection: span * pushShares[i.rule],
    tooSmall: isUnder(p.small, leastPulley(i.section) * 1e-3),
  };
  return { value, steps };
}

function pitchOf(i: BeltInputs, diameter: number): Worked<number> {
  if (i.diametersAre === 'pitch') return { value: diameter, steps: [] };
  const a = outsideMinusPitch(i.section);
  return { value: diameter - a, steps: [step(f.pitchDiameter, { d_o: diameter, a }, diameter - a)] };
}

const lengthUnits = ['mm', 'in'] as const;

/** The drive as values: sizes a drawing needs, and what is wrong with its pulleys and its speed. */
export function driveValues(i: BeltInputs, d: Drive): Value[] {
  const engineIsSmall = d.engine <= d.blade;
  const [small, large] = [d.wrap, 2 * Math.PI - d.wrap];
  return [
    {
      kind: 'quantity',
      key: 'length',
      label: 'Belt length',
      value: d.length,
      units: lengthUnits,
      decimals: [1, 2],
      main: i.known === 'centre',
    },
    {
      kind: 'quantity',
      key: 'centre',
      label: 'Distance between the shaft centers',
      value: d.centre,
      units: lengthUnits,
      decimals: [1, 2],
      main: i.known === 'length',
    },
    { kind: 'quantity', key: 'span', label: 'Free span', value: d.span, units: lengthUnits, decimals: [1, 2] },
    {
      kind: 'quantity',
      key: 'enginePitch',
      label: 'Engine pulley, pitch diameter',
      value: d.engine,
      units: lengthUnits,
      decimals: [1, 3],
    },
    {
      kind: 'quantity',
      key: 'bladePitch',
      label: 'Blade pulley, pitch diameter',
      value: d.blade,
      units: lengthUnits,
      decimals: [1, 3],
    },
    {
      kind: 'quantity',
      key: 'engineWrap',
      label: 'Wrap on the engine pulley',
      value: engineIsSmall ? small : large,
      units: ['°', '°'],
    },
    {
      kind: 'quantity',
      key: 'bladeWrap',
      label: 'Wrap on the blade pulley',
      value: engineIsSmall ? large : small,
      units: ['°', '°'],
    },
    { kind: 'quantity', key: 'speed', label: 'Belt speed', value: d.speed, units: ['m/s', 'ft/min'] },
    {
      kind: 'quantity',
      key: 'engineRotation',
      label: 'Engine speed, no slip',
      value: d.engineRotation,
      units: ['rpm', 'rpm'],
    },
    {
      kind: 'quantity',
      key: 'bladeRotation',
      label: 'Blade-shaft speed, no slip',
      value: d.bladeRotation,
      units: ['rpm', 'rpm'],
    },
    {
      kind: 'quantity',
      key: 'face',
      label: 'Least width of the pulley',
      value: isRibbed(i.section) ? ribbedFace(i.section, d.belts) : grooveSize(i.section, d.small, d.belts).face,
      units: lengthUnits,
      decimals: [1, 2],
      source: isRibbed(i.section) ? 'iso-9982' : 'din-2211-grooves',
    },
    ...(d.tooSmall
      ? [
          {
            kind: 'verdict',
            key: 'pulleyVerdict',
            label: 'Small pulley',
            code: 'pulley-small',
            level: 'caution',
          } as const,
        ]
      : []),
  ];
}
