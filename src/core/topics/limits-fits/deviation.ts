/**
 * Fundamental deviations: the limit of a zone that lies nearest the nominal size, and how the standard reaches it.
 * All in micrometres here, as the tables print them. Source: iso-286-1 (rules of its Annex and notes of Tables 2 and 3).
 */
import { holeJ, deltas, shaftJ } from './tables/j-and-delta.ts';
import { grades, standardTolerances } from './tables/it-grades.ts';
import { lettersAToG, shaftAToG } from './tables/shaft-a-to-g.ts';
import { lettersKToZC, shaftKToZC } from './tables/shaft-k-to-zc.ts';
import { endOfFirstRange, rowFor } from './steps.ts';
import type { Grade, Letter, Zone } from './zone.ts';

export interface Deviation {
  /** Which limit the value is. `both`: half the tolerance to either side (js, JS). */
  readonly limit: 'upper' | 'lower' | 'both';
  readonly value: number;
  /** Present where a hole's value is the shaft's with its sign changed plus delta. */
  readonly fromShaft?: { readonly shaft: number; readonly delta: number };
  /** The one cell the standard sets by hand. */
  readonly special?: true;
}

/** @param end end of the size step, mm @returns IT value, µm; undefined where the standard has none */
export function toleranceAt(end: number, grade: Grade): number | undefined {
  if (end <= 1 && rank(grade) >= rank('14')) return undefined;
  return rowFor(standardTolerances, end)[1 + rank(grade)] ?? undefined;
}

/**
 * Delta for holes K to ZC: IT(n) - IT(n-1), held as printed.
 * @returns µm; 0 up to 3 mm and above 500 mm; undefined for grades other than IT3 to IT8 in between
 */
export function deltaAt(end: number, grade: Grade): number | undefined {
  if (end <= 3 || end > endOfFirstRange) return 0;
  const n = rank(grade) - rank('3');
  return n < 0 || n > 5 ? undefined : rowFor(deltas, end)[1 + n];
}

/** @returns undefined where the standard defines no such zone at this size */
export function deviationAt(end: number, zone: Zone): Deviation | undefined {
  return zone.hole ? holeDeviation(end, zone.letter, zone.grade) : shaftDeviation(end, zone.letter, zone.grade);
}

function shaftDeviation(end: number, letter: Letter, grade: Grade): Deviation | undefined {
  if (letter === 'js') return half(end, grade);
  if (letter === 'h') return { limit: 'upper', value: 0 };
  if (letter === 'j') return known('lower', jRow(shaftJ, end, { 5: 1, 6: 1, 7: 2, 8: 3 }[grade as string]));
  const clear = clearance(end, letter);
  if (clear !== undefined) return known('upper', clear === null ? null : -clear);
  // k is 0 outside IT4 to IT7, and at every grade above 500 mm.
  const isK0 = letter === 'k' && (rank(grade) < rank('4') || rank(grade) > rank('7'));
  return known('lower', isK0 ? 0 : interference(end, letter));
}

function holeDeviation(end: number, letter: Letter, grade: Grade): Deviation | undefined {
  if (letter === 'js') return half(end, grade);
  if (letter === 'h') return { limit: 'lower', value: 0 };
  if (letter === 'j') return known('upper', jRow(holeJ, end, { 6: 1, 7: 2, 8: 3 }[grade as string]));
  const clear = clearance(end, letter);
  if (clear !== undefined) return known('lower', clear);
  return tightHole(end, letter, grade);
}

/** K, M, N take delta up to IT8, P to ZC up to IT7; coarser grades do not. Above 500 mm all mirror the shaft, N too, and K ends at IT8. */
function tightHole(end: number, letter: Letter, grade: Grade): Deviation | undefined {
  const coarse = rank(grade) > rank('8');
  if (letter === 'k' && coarse && end > 3) return undefined;
  if (letter === 'n' && coarse && end <= endOfFirstRange)
    return end <= 1 ? undefined : { limit: 'upper', value: end <= 3 ? -4 : 0 };
  if (letter === 'm' && grade === '6' && end > 250 && end <= 315) return { limit: 'upper', value: -9, special: true };
  const takesDelta = rank(grade) <= rank(['k', 'm', 'n'].includes(letter) ? '8' : '7');
  const shaft = interference(end, letter);
  const delta = takesDelta ? deltaAt(end, grade) : 0;
  if (shaft === null || delta === undefined) return undefined;
  return { limit: 'upper', value: delta - shaft, fromShaft: { shaft, delta } };
}

function half(end: number, grade: Grade): Deviation | undefined {
  const tolerance = toleranceAt(end, grade);
  return tolerance === undefined ? undefined : { limit: 'both', value: tolerance / 2 };
}

function known(limit: 'upper' | 'lower', value: number | null | undefined): Deviation | undefined {
  return value === null || value === undefined ? undefined : { limit, value };
}

function jRow(
  table: readonly (readonly (number | null)[])[],
  end: number,
  column: number | undefined,
): number | null | undefined {
  return column === undefined ? undefined : rowFor(table, end)[column];
}

/** @returns undefined when the letter is not one of a to g; null when it is and this size has none */
function clearance(end: number, letter: Letter): number | null | undefined {
  const at = (lettersAToG as readonly string[]).indexOf(letter);
  if (at < 0) return undefined;
  if ((letter === 'a' || letter === 'b') && end <= 1) return null;
  return rowFor(shaftAToG, end)[1 + at] ?? null;
}

function interference(end: number, letter: Letter): number | null {
  const at = (lettersKToZC as readonly string[]).indexOf(letter);
  return at < 0 ? null : (rowFor(shaftKToZC, end)[1 + at] ?? null);
}

/** Place of a grade among IT01, IT0, IT1 ... IT18. */
export function rank(grade: Grade): number {
  return grades.indexOf(grade);
}
