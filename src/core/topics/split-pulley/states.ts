/** The halves drawn together pass by pass: what a drawing of each state needs. */
import { beltLength, pulleys } from '../belt-tension/index.ts';
import { pitchRadius, type Cones } from './climb.ts';

export interface State {
  readonly pass: number;
  readonly gap: number;
  readonly radius: number;
  readonly path: number;
}

/**
 * The halves drawn together pass by pass.
 * @param c pulley and belt @param drive the other pulley [m] @param centre distance of the shafts [m] @param from, to gap at the start and end [m]
 * @param stepGap how much each pass closes the gap [m], > 0 @param most rows at most; passes in between are left out evenly
 * @returns states from open to closed; the last is always the closed one
 */
export function statesOf(
  c: Cones,
  drive: number,
  centre: number,
  from: number,
  to: number,
  stepGap: number,
  most: number,
): State[] {
  const last = Math.max(1, Math.ceil((from - to) / stepGap - 1e-9));
  const rows = Math.min(last, most - 1);
  return Array.from({ length: rows + 1 }, (_, i) => {
    const pass = Math.round((i * last) / rows);
    return stateAt(c, drive, centre, pass, Math.max(to, from - pass * stepGap));
  });
}

/**
 * Pitch radius at a gap and the belt path it asks for.
 * @param c pulley and belt @param drive diameter of the other pulley [m] @param centre distance of the shafts [m]
 * @param pass its number, for the table @param gap between the halves [m] @returns radius and path [m]
 */
export function stateAt(c: Cones, drive: number, centre: number, pass: number, gap: number): State {
  const radius = pitchRadius(c, gap);
  return { pass, gap, radius, path: beltLength(pulleys(2 * radius, drive), centre) };
}
