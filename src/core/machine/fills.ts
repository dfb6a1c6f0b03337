import type { Fill, PlateMap } from '../contract/plate.ts';
import { facts } from './facts.ts';

/**
 * A topic's list of facts made ready for filling: each with the unit a bare number of that fact has.
 * @param plate which fact fills which box
 * @returns one fill for each box, in the order given; a fact nobody knows has no unit
 * Example: a box that takes bladeDiameter gets the unit mm with it. Source: arithmetic.
 */
export function fillsOf(plate: PlateMap): readonly Fill[] {
  return Object.entries(plate).map(([box, from]) => {
    const { fact, only } = typeof from === 'string' ? { fact: from, only: {} } : from;
    const field = facts.find((f) => f.key === fact);
    return { box, fact, only, unit: field?.kind === 'quantity' ? field.units[0] : '' };
  });
}
