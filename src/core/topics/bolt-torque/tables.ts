/** Metric coarse threads and property classes. Sources: iso-898-1 for areas and proof stresses, shigley-bolts for torque factors. */

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

/** Stress under proof load [Pa]. Class 8.8 has two: up to and above 16 mm. */
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
