/** Pitch, outside and root diameters and the width of a pulley. */
import { isOver } from '../../thresholds/index.ts';
import { isRibbed, ribGroove, vGroove, type RibSection, type Section, type VSection } from './tables.ts';

const mm = 1e-3;

/**
 * Pitch (datum or effective) diameter from the outside diameter.
 * Formulas: V: d = d_o - 2 c. Ribbed: d = d_o - 2X + 2N, with 2N at its greatest, so d is the largest it can be.
 * @param section of the belt @param outside d_o [m] @returns d [m]
 * Example: A section, 105.6 mm outside -> 100 mm. Sources: din-2211-grooves, iso-9982.
 */
export function pitchFromOutside(section: Section, outside: number): number {
  return outside - outsideMinusPitch(section);
}

/**
 * Outside diameter less pitch diameter; below zero for ribbed pulleys.
 * @returns [m] Example: A -> 5.6 mm. Sources: din-2211-grooves, iso-9982.
 */
export function outsideMinusPitch(section: Section): number {
  if (!isRibbed(section)) return 2 * vGroove(section).above * mm;
  const { overBalls, ballsToOutside } = ribGroove(section);
  return (overBalls - ballsToOutside) * mm;
}

export interface GrooveSize {
  /** [m], as are root and face. */
  readonly outside: number;
  readonly root: number;
  readonly face: number;
  /** [rad] */
  readonly angle: number;
}

/**
 * A V pulley from its pitch diameter.
 * Formulas: outside = d + 2 c, root = outside - 2 depth, face = (n - 1) e + 2 f; angle by diameter.
 * @param section of the belt @param pitch d [m] @param grooves n >= 1 @returns diameters and width [m], angle [rad]
 * Example: A, 100 mm, 2 grooves -> 105.6, 77.6, 35 mm, 34 degrees. Source: din-2211-grooves.
 */
export function grooveSize(section: VSection, pitch: number, grooves: number): GrooveSize {
  const g = vGroove(section);
  const outside = pitch + 2 * g.above * mm;
  const degrees = !isOver(pitch, g.angleUpTo * mm) ? g.angleSmall : g.angleAbove;
  return {
    outside,
    root: outside - 2 * g.depth * mm,
    face: ((grooves - 1) * g.pitch + 2 * g.edge) * mm,
    angle: (degrees * Math.PI) / 180,
  };
}

/**
 * Least face width of a ribbed pulley: (n - 1) e + 2 f.
 * @param ribs n >= 1 @returns [m] Example: 6 ribs PJ -> 15.3 mm. Source: iso-9982.
 */
export function ribbedFace(section: RibSection, ribs: number): number {
  const { pitch, edge } = ribGroove(section);
  return ((ribs - 1) * pitch + 2 * edge) * mm;
}
