/**
 * A measured seat against a zone: every reading must lie within the limits, not their mean (ISO 14405-1, two-point sizes),
 * and a gauge that reads to within u can't tell a reading within u of a limit from one on the other side (ISO 14253-1).
 * Both standards from memory.
 */
import { isOver, isUnder } from '../../thresholds/index.ts';
import type { Fit } from '../limits-fits/index.ts';
import type { RingFit, Seat, SeatForm } from './seat.ts';

interface Range {
  readonly low: number;
  readonly high: number;
}

/** `near` and `at`: within the gauge's band, inside the limit or outside it. */
export type Place = 'inside' | 'near' | 'at' | 'loose' | 'tight' | 'both';

export interface Standing {
  readonly place: Place;
  /** Past the loose and the tight limit at the worst reading [m]; below zero is inside. */
  readonly looseBy: number;
  readonly tightBy: number;
}

/**
 * Where a range lies against the range allowed; the low end of both is the loose one.
 * @param got smallest and largest, [m] @param allowed [m] @param band what the gauge can't tell [m], >= 0
 * @returns `loose`, `tight` or `both` only where a limit is passed by more than the band
 * Example: 25.002 to 25.011 mm allowed, band 3 µm: 25.006 to 25.007 -> inside; 25.000 -> at; 24.998 -> loose;
 * 24.998 to 25.016 -> both. Source: ISO 14253-1, from memory.
 */
export function standingOf(got: Range, allowed: Range, band: number): Standing {
  const [looseBy, tightBy] = [allowed.low - got.low, got.high - allowed.high];
  const [loose, tight] = [isUnder(got.low, allowed.low - band), isOver(got.high, allowed.high + band)];
  const place = (): Place => {
    if (loose) return tight ? 'both' : 'loose';
    if (tight) return 'tight';
    if (isUnder(got.low, allowed.low) || isOver(got.high, allowed.high)) return 'at';
    return isUnder(got.low, allowed.low + band) || isOver(got.high, allowed.high - band) ? 'near' : 'inside';
  };
  return { place: place(), looseBy, tightBy };
}

export interface Measured {
  readonly seat: Seat;
  readonly size: number;
  readonly form: SeatForm;
  /** Interference as measured [m]. */
  readonly fit: Fit;
  /** True when the ring was measured too, and is not only known by its class. */
  readonly ringKnown: boolean;
  /** What the gauge reads to within [m]. */
  readonly gauge: number;
}

export type SeatCode =
  'good' | 'near-limit' | 'at-limit' | 'fit-right' | 'crooked' | 'tight' | 'loose' | 'slack' | 'uneven';

export interface Judgement extends Standing {
  readonly code: SeatCode;
  readonly form: Evenness;
  /** The seat may be used as it is. */
  readonly accepted: boolean;
}

const usable: readonly SeatCode[] = ['good', 'near-limit', 'at-limit', 'fit-right'];

/**
 * A measured seat against one zone. Where the ring was measured, the fit decides and the seat only colors the words.
 * @param m the seat as measured @param zone limits of the zone and the fit it gives
 * Example: 25 k5 with 24.998 and 25.016, gauge 3 µm -> uneven. 24.999 with a ring of 24.990 -> fit-right.
 * Source: iso-286-1.
 */
export function judgeSeat(m: Measured, { seat: limits, fit }: RingFit): Judgement {
  const d = m.size;
  const seat = standingOf(
    asHold(m, m.form.smallest, m.form.largest),
    asHold(m, d + limits.lower, d + limits.upper),
    m.gauge,
  );
  // Interferences are compared on top of the size, so that a limit is met to the last bit like any other.
  const over = ({ least, most }: Fit): Range => ({ low: d + least, high: d + most });
  const held = m.ringKnown ? standingOf(over(m.fit), over(fit), m.gauge) : seat;
  const form = evenness(m.form, limits.upper - limits.lower, m.gauge);
  const code = codeOf(held.place, m);
  const decided: SeatCode = !usable.includes(code)
    ? code
    : form.code === 'uneven'
      ? 'crooked'
      : m.ringKnown && !['inside', 'near'].includes(seat.place)
        ? 'fit-right'
        : code;
  return { ...held, code: decided, form, accepted: usable.includes(decided) };
}

/** Sizes turned so that the loose end is the low one: a large shaft is tight, a large housing loose. */
function asHold({ seat, size }: Measured, smallest: number, largest: number): Range {
  return seat === 'shaft' ? { low: smallest, high: largest } : { low: 2 * size - largest, high: 2 * size - smallest };
}

function codeOf(place: Place, { fit, form, seat }: Measured): SeatCode {
  switch (place) {
    case 'inside':
      return 'good';
    case 'near':
      return 'near-limit';
    case 'at':
      return 'at-limit';
    case 'tight':
      return 'tight';
    case 'both':
      return 'uneven';
    case 'loose': {
      // At the loosest place, with the middle of what the ring may be.
      const open =
        seat === 'shaft' ? isUnder(form.smallest, form.mean - fit.mean) : isOver(form.largest, form.mean + fit.mean);
      return open ? 'loose' : 'slack';
    }
  }
}

export interface Evenness {
  readonly code: 'even' | 'at-limit' | 'uneven';
  readonly worst: number;
  readonly allowed: number;
}

/**
 * Taper and out-of-round against half the tolerance of the seat. Two readings differ by more than the gauge's band
 * before the difference is told.
 * @param form of the readings [m] @param tolerance of the zone [m] @param gauge band [m]
 * Example: k5 at 25 mm is 9 µm wide; 4.5 µm -> even, 7.5 µm with a gauge of 3 µm -> at-limit, more -> uneven.
 * Source: common-practice.
 */
export function evenness(form: SeatForm, tolerance: number, gauge: number): Evenness {
  const worst = Math.max(form.taper, form.outOfRound);
  const allowed = tolerance / 2;
  const code = isOver(worst, allowed + gauge) ? 'uneven' : isOver(worst, allowed) ? 'at-limit' : 'even';
  return { code, worst, allowed };
}

/**
 * Whether a gauge is too coarse for a zone: it reads to within more than a quarter of the tolerance.
 * Example: 3 µm for 9 µm -> true; 3 µm for 30 µm -> false. Source: common-practice.
 */
export function isCoarse(gauge: number, tolerance: number): boolean {
  return isOver(gauge, tolerance / 4);
}
