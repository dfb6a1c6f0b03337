/**
 * Threads, property classes and torque factors. Sources: iso-898-1 for metric areas and proof stresses, ifi-torque-table for
 * the proof stresses of inch grades, shigley-bolts for torque factors.
 */
import { inchStressArea } from './torque.ts';

/** [size, mm; pitch, mm; stress area, mm2]. */
export const threads = [
  [4, 0.7, 8.78], [5, 0.8, 14.2], [6, 1, 20.1], [8, 1.25, 36.6], [10, 1.5, 58], [12, 1.75, 84.3],
  [14, 2, 115], [16, 2, 157], [18, 2.5, 192], [20, 2.5, 245], [22, 2.5, 303], [24, 3, 353],
] as const;

export const sizes = ['M4', 'M5', 'M6', 'M8', 'M10', 'M12', 'M14', 'M16', 'M18', 'M20', 'M22', 'M24'] as const;
export type BoltSize = (typeof sizes)[number];
export type BoltClass = '8.8' | '10.9' | '12.9';

export interface Thread {
  /** [m] */
  readonly diameter: number;
  readonly pitch: number;
  /** [m2] */
  readonly area: number;
}

/** Diameter, pitch [m] and stress area [m²] of a coarse thread. Example: M8 -> 8 mm, 1.25 mm, 36.6 mm². Source: the table above. */
export function threadOf(size: BoltSize): Thread {
  const [d, p, area] = threads[sizes.indexOf(size)] ?? threads[0];
  return { diameter: d / 1000, pitch: p / 1000, area: area / 1e6 };
}

/** Unified threads: [name, diameter in inches, threads to the inch], coarse (UNC) before fine (UNF). */
export const inchThreads = [
  ['10-24', 0.19, 24], ['10-32', 0.19, 32], ['1/4-20', 0.25, 20], ['1/4-28', 0.25, 28],
  ['5/16-18', 0.3125, 18], ['5/16-24', 0.3125, 24], ['3/8-16', 0.375, 16], ['3/8-24', 0.375, 24],
  ['7/16-14', 0.4375, 14], ['7/16-20', 0.4375, 20], ['1/2-13', 0.5, 13], ['1/2-20', 0.5, 20],
] as const;

export type InchSize = (typeof inchThreads)[number][0];
export type InchGrade = '5' | '8';

/** Diameter, pitch [m] and stress area [m2] of a unified thread; the area by formula. Example: 1/4-20 -> 0.0318 in2. */
export function inchThreadOf(size: InchSize): Thread {
  const [, d, perInch] = inchThreads.find(([name]) => name === size) ?? inchThreads[0];
  const [diameter, pitch] = [d * 0.0254, 0.0254 / perInch];
  return { diameter, pitch, area: inchStressArea(diameter, pitch) };
}

/** Stress under proof load [Pa] of an inch grade, up to 1 in: 85 and 120 ksi. They give back the printed torques of ifi-torque-table. */
export function gradeProofStress(grade: InchGrade): number {
  return (grade === '5' ? 85 : 120) * 6894757.293168362;
}

/** Stress under proof load [Pa]. Class 8.8 has two: up to and above 16 mm. Example: M18, 8.8 -> 600 MPa. Source: iso-898-1. */
export function proofStress(size: BoltSize, boltClass: BoltClass): number {
  if (boltClass === '8.8') return (threadOf(size).diameter > 0.016 ? 600 : 580) * 1e6;
  return boltClass === '10.9' ? 830e6 : 970e6;
}

/** Torque factor K of each state of the thread, and how far the preload may scatter at one torque. */
export const conditions = [
  { value: 'plain', label: 'Black, dry', K: 0.3, scatter: 0.35 },
  { value: 'zinc', label: 'Zinc plated, dry', K: 0.2, scatter: 0.35 },
  { value: 'oiled', label: 'Oiled', K: 0.18, scatter: 0.25 },
  { value: 'cadmium', label: 'Cadmium plated', K: 0.16, scatter: 0.25 },
  { value: 'anti-seize', label: 'Anti-seize paste', K: 0.12, scatter: 0.25 },
] as const;

export type ThreadState = (typeof conditions)[number]['value'];

/** The state of a thread with its torque factor K; source shigley-bolts. */
export function conditionOf(value: ThreadState) {
  return conditions.find((c) => c.value === value) ?? conditions[1];
}
