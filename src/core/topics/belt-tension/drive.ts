/** From what was typed to the drive itself: pitch diameters, centres, length, wraps and belt speed. */
import type { InputsOf } from '../../contract/field.ts';
import { step, type WorkingStep } from '../../contract/formula.ts';
import type { Problem } from '../../contract/result.ts';
import { beltMass, pushExtra } from './belt-mass.ts';
import type { fields } from './fields.ts';
import * as f from './formulas.ts';
import { beltLength, centreForLength, freeSpan, pulleys, shortestLength, wrapSmall, type Pulleys } from './geometry.ts';
import { outsideMinusPitch } from './pulley-size.ts';
import { isRibbed, leastPulley } from './sections.ts';

export type BeltInputs = InputsOf<typeof fields>;

export interface Drive extends Pulleys {
  readonly engine: number;
  readonly blade: number;
  readonly centre: number;
  readonly length: number;
  readonly span: number;
  readonly wrap: number;
  readonly speed: number;
  readonly otherRotation: number;
  readonly belts: number;
  /** Ribs that are pushed, plucked and marked as one: all of a ribbed belt, one of a V belt. */
  readonly together: number;
  readonly mass: number;
  readonly massLow: number;
  readonly massHigh: number;
  readonly massSource: string | undefined;
  readonly extra: number;
  readonly deflection: number;
  readonly tooSmall: boolean;
}

/**
 * Pulleys, centre distance, wrap and speed from the inputs [SI]; a problem where the pulleys touch or the belt is
 * short.
 */
export function solveDrive(i: BeltInputs, working: WorkingStep[]): Drive | Problem {
  const engine = pitchOf(i, i.enginePulley, working);
  const blade = pitchOf(i, i.bladePulley, working);
  const p = pulleys(engine, blade);
  const least = (p.small + p.large) / 2;
  if (!(p.small > 0))
    return { field: i.enginePulley < i.bladePulley ? 'enginePulley' : 'bladePulley', code: 'no-pitch-diameter' };
  if (i.known === 'centre' && (i.centre ?? 0) <= least)
    return { field: 'centre', code: 'pulleys-touch', data: { least } };
  const centre = i.known === 'centre' ? (i.centre ?? 0) : centreForLength(p, i.length ?? 0);
  if (centre === undefined) return { field: 'length', code: 'belt-too-short', data: { least: shortestLength(p) } };

  const theta = wrapSmall(p, centre);
  working.push(step(f.wrap, { D: p.large, d: p.small, C: centre }, theta));
  const length = beltLength(p, centre);
  working.push(step(f.length, { C: centre, D: p.large, d: p.small, theta_D: 2 * Math.PI - theta, theta }, length));
  const span = freeSpan(p, centre);
  working.push(step(f.span, { C: centre, D: p.large, d: p.small }, span));
  const ofEngine = i.speedOf === 'engine';
  const speed = Math.PI * (ofEngine ? engine : blade) * i.rotation;
  working.push(step(f.speed, { d_n: ofEngine ? engine : blade, n: i.rotation }, speed));

  const printed = beltMass(i.section);
  return {
    ...p,
    engine,
    blade,
    centre,
    length,
    span,
    wrap: theta,
    speed,
    otherRotation: ofEngine ? (i.rotation * engine) / blade : (i.rotation * blade) / engine,
    belts: i.belts,
    together: isRibbed(i.section) ? i.belts : 1,
    mass: i.mass ?? printed.value,
    massLow: i.mass ?? printed.low,
    massHigh: i.mass ?? printed.high,
    massSource: i.mass === undefined ? printed.source : undefined,
    extra: i.pushExtra ?? pushExtra(i.section),
    deflection: i.rule === '64' ? span / 64 : span * 0.016,
    tooSmall: p.small < leastPulley(i.section) * 1e-3 * (1 - 1e-9),
  };
}

function pitchOf(i: BeltInputs, diameter: number, working: WorkingStep[]): number {
  if (i.diametersAre === 'pitch') return diameter;
  const a = outsideMinusPitch(i.section);
  working.push(step(f.pitchDiameter, { d_o: diameter, a }, diameter - a));
  return diameter - a;
}
