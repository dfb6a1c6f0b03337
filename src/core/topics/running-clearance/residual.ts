/** Clearance left, for the tightest and the loosest parts together. */
import { pressure } from '../press-fit/index.ts';
import { type Material, warmLoss } from '../../materials/index.ts';
import { isUnder } from '../../thresholds/index.ts';
import { countedShare, heatLoss, innerGrowth, outerShrink, type RingJoint, type Surface } from './loss.ts';

export interface Setting {
  readonly bore: number;
  readonly outside: number;
  readonly innerRaceway: number;
  readonly outerRaceway: number;
  readonly shaftBore: number;
  /** `Infinity` when not known. */
  readonly housingOutside: number;
  readonly shaft: Material;
  readonly housing: Material;
  readonly ring: Material;
  /** Inner ring minus outer ring, and housing minus room [K]. */
  readonly difference: number;
  readonly housingRise: number;
  readonly surface: Surface;
}

export interface Loss {
  readonly inner: number;
  readonly outer: number;
  readonly heat: number;
  /** Housing interference left when warm [m]; below zero the ring is loose. */
  readonly warmFit: number;
  /** The warm housing has outgrown its hold on the ring. */
  readonly looseWarm: boolean;
  readonly innerPressure: number;
  readonly outerPressure: number;
}

function inner(s: Setting): RingJoint {
  return {
    diameter: s.bore,
    raceway: s.innerRaceway,
    ringE: s.ring.E,
    ringNu: s.ring.nu,
    otherE: s.shaft.E,
    otherNu: s.shaft.nu,
  };
}

function outer(s: Setting): RingJoint {
  return {
    diameter: s.outside,
    raceway: s.outerRaceway,
    ringE: s.ring.E,
    ringNu: s.ring.nu,
    otherE: s.housing.E,
    otherNu: s.housing.nu,
  };
}

/**
 * Losses of clearance for one pair of interferences.
 * @param s bearing, shaft, housing and heat @param shaftInterference [m] @param housingInterference at room temperature [m]
 * @returns [m] and [Pa]; clearance costs nothing. Sources: shigley-press-fits, fit-smoothing-memory.
 */
export function lossesAt(s: Setting, shaftInterference: number, housingInterference: number): Loss {
  const onShaft = countedShare(s.bore, s.surface) * shaftInterference;
  const inHousing = countedShare(s.outside, s.surface) * housingInterference;
  const outgrown = warmLoss(s.outside, s.housing.alpha, s.ring.alpha, s.housingRise);
  const warmFit = inHousing - outgrown;
  return {
    inner: innerGrowth(inner(s), s.shaftBore, onShaft),
    outer: outerShrink(outer(s), s.housingOutside, warmFit),
    heat: heatLoss(s.outerRaceway, s.ring.alpha, s.difference),
    warmFit,
    looseWarm: isUnder(inHousing, outgrown),
    innerPressure: pressure(
      {
        diameter: s.bore,
        hubOutside: s.innerRaceway,
        shaftBore: s.shaftBore,
        hubE: s.ring.E,
        hubNu: s.ring.nu,
        shaftE: s.shaft.E,
        shaftNu: s.shaft.nu,
      },
      onShaft,
    ),
    outerPressure: pressure(
      {
        diameter: s.outside,
        hubOutside: s.housingOutside,
        shaftBore: s.outerRaceway,
        hubE: s.housing.E,
        hubNu: s.housing.nu,
        shaftE: s.ring.E,
        shaftNu: s.ring.nu,
      },
      warmFit,
    ),
  };
}

/** All three losses of clearance together [m]. */
export function totalOf(l: Loss): number {
  return l.inner + l.outer + l.heat;
}
