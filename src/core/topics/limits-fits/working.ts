import { step, type WorkingStep } from '../../contract/formula.ts';
import {
  halfTolerance,
  holeFromShaft,
  holeLower,
  holeUpper,
  largestPart,
  shaftLower,
  shaftUpper,
  smallestPart,
} from './formulas.ts';
import type { Explained, Limits } from './limits.ts';

/** How the limits of one zone come from the table. */
export function zoneWorking({ zone, limits: { upper, lower }, tolerance: IT, deviation }: Explained): WorkingStep[] {
  if (deviation.limit === 'both') return [step(halfTolerance, { IT }, upper)];
  if (!zone.hole)
    return [
      deviation.limit === 'upper'
        ? step(shaftLower, { es: upper, IT }, lower)
        : step(shaftUpper, { ei: lower, IT }, upper),
    ];
  if (deviation.limit === 'lower') return [step(holeUpper, { EI: lower, IT }, upper)];
  const last = step(holeLower, { ES: upper, IT }, lower);
  if (!deviation.fromShaft) return [last];
  return [
    step(holeFromShaft, { Delta: deviation.fromShaft.delta / 1e6, ei: deviation.fromShaft.shaft / 1e6 }, upper),
    last,
  ];
}

/** Working of one size in a zone: step of the table, IT value and deviations, in this order. */
export function sizeWorking(size: number, { upper, lower }: Limits): WorkingStep[] {
  return [
    step(largestPart, { D: size, a_u: upper }, size + upper),
    step(smallestPart, { D: size, a_l: lower }, size + lower),
  ];
}
