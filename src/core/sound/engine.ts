/** Engines by how often they fire, and the speeds at which a saw is listened to. Rotation is in 1/s. */

export interface Engine {
  readonly strokes: 2 | 4;
  readonly cylinders: 1 | 2;
}

export interface RotationRange {
  readonly lowest: number;
  readonly highest: number;
}

/** What a saw is asked for: standing idle, the clutch just taking hold, wide open without load. */
export type ListenedAt = 'idle' | 'take-hold' | 'full';

/**
 * Speeds looked for, by strokes [1/s]. Wide enough for a saw out of adjustment, and less than two octaves, so that half or twice
 * the speed seldom lies within. Source: common practice.
 */
export const listenedRange: Readonly<Record<ListenedAt, Readonly<Record<2 | 4, RotationRange>>>> = {
  idle: { 2: range(1500, 4800), 4: range(800, 2400) },
  'take-hold': { 2: range(2200, 7000), 4: range(1300, 4000) },
  full: { 2: range(5000, 14500), 4: range(1800, 5000) },
};

function range(lowest: number, highest: number): RotationRange {
  return { lowest: lowest / 60, highest: highest / 60 };
}

/**
 * Turns in one whole working cycle of an engine: 1 for a two-stroke, 2 for a four-stroke.
 * @param engine its strokes and cylinders @returns turns
 * Example: cycleTurns({ strokes: 4, cylinders: 1 }) -> 2. Source: arithmetic.
 */
export function cycleTurns(engine: Engine): number {
  return engine.strokes / 2;
}

/**
 * How often an engine fires: f = n z / c, with z cylinders and c turns in a cycle.
 * @param rotation n [1/s], at least 0 @param engine its strokes and cylinders @returns f [Hz]
 * Example: firingFrequency(60, { strokes: 4, cylinders: 1 }) -> 30. Source: arithmetic.
 */
export function firingFrequency(rotation: number, engine: Engine): number {
  return (rotation * engine.cylinders) / cycleTurns(engine);
}
