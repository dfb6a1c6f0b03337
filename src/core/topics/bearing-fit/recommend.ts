/**
 * Which zone a seat should have, from how the load turns, how large it is, and the housing.
 * Source: abma-7 (ball bearings of Normal class, solid steel shaft, iron or steel housing). Grade 7 is given for housings
 * where the table prints grade 6: its footnote allows the wider grade. Two rows could not be told apart in print (abma-7-memory).
 */
import { isOver } from '../../thresholds/index.ts';

export type Turning = 'inner' | 'outer' | 'unclear';
export type Load = 'light' | 'normal' | 'heavy';
export type HousingKind = 'solid' | 'split' | 'thin' | 'hot-shaft';

export interface Situation {
  readonly seat: 'shaft' | 'housing';
  /** Bore or outside diameter [m]. */
  readonly size: number;
  /** The ring that turns against the load. A belt pulling one way on a turning shaft: the inner ring. */
  readonly turning: Turning;
  readonly load: Load;
  readonly housing: HousingKind;
  /** The ring must be free to slide along its seat. */
  readonly slides: boolean;
}

export interface Advice {
  readonly zone: string;
  /** Code of the sentence that gives the reason. */
  readonly reason: string;
  readonly source: string;
}

/** Example: 25 mm shaft, inner ring turns, normal load -> k5. 52 mm housing, outer ring turns, normal load -> N7. */
export function recommend(s: Situation): Advice {
  return s.seat === 'shaft' ? shaftAdvice(s) : housingAdvice(s);
}

function shaftAdvice({ size, turning, load, slides }: Situation): Advice {
  if (turning === 'outer') return slides ? advice('g6', 'shaft-still-slides') : advice('h6', 'shaft-still');
  const small = !isOver(size, 0.018);
  if (load === 'light') return advice(small ? 'h5' : 'j6', 'shaft-turns-light');
  if (load === 'normal') return advice(small ? 'j5' : 'k5', 'shaft-turns');
  // The table has no heavy row up to 18 mm; its normal row is the tightest it gives there.
  if (small) return advice('j5', 'shaft-turns-heavy-small');
  return advice(isOver(size, 0.1) ? 'm5' : 'k5', 'shaft-turns-heavy');
}

function housingAdvice({ turning, load, housing, slides }: Situation): Advice {
  if (turning === 'outer') {
    if (load === 'light') return advice('M7', 'housing-turns-light');
    return housing === 'thin' && load === 'heavy' ? advice('P7', 'housing-turns-thin') : advice('N7', 'housing-turns');
  }
  if (turning === 'unclear') {
    if (load === 'light' || (load === 'normal' && slides))
      return advice('J7', 'housing-unclear-slides', 'abma-7-memory');
    return load === 'heavy' ? advice('M7', 'housing-unclear-heavy', 'abma-7-memory') : advice('K7', 'housing-unclear');
  }
  if (housing === 'hot-shaft') return advice('G7', 'housing-still-hot-shaft');
  if (load === 'heavy' && !slides) return advice('J7', 'housing-still-shock');
  return advice('H7', 'housing-still');
}

function advice(zone: string, reason: string, source = 'abma-7'): Advice {
  return { zone, reason: `why-${reason}`, source };
}

/** Housing zones from loose to tight, for finding one that keeps its hold when warm. */
export const tighterHousings = ['H7', 'J7', 'K7', 'M7', 'N7', 'P7'] as const;
