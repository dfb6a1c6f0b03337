/** Why a size or a zone is refused, and the nearest ones the standard does define. */
import type { Problem } from '../../contract/result.ts';
import { limitsAt } from './limits.ts';
import { endOfFirstRange, largestSize, stepIndex } from './steps.ts';
import { grades } from './tables/it-grades.ts';
import { letters, zoneName, zonePair, zoneParts, type ZoneParts } from './zone.ts';

/**
 * @param size [m] @param name zone as typed @param fields keys of the fields they came from
 * @returns undefined when the zone is defined at this size
 */
export function whyRefused(
  size: number,
  name: string,
  fields: { readonly size: string; readonly zone: string },
): Problem | undefined {
  if (stepIndex(size) < 0) return { field: fields.size, code: 'size-outside', data: { got: size, max: largestSize } };
  const both = zonePair(name);
  if (both) return { field: fields.zone, code: 'zone-of-a-pair', data: { got: name, ...both } };
  const parts = zoneParts(name);
  if (!parts) return { field: fields.zone, code: 'not-a-zone', data: { got: name } };
  if (limitsAt(size, name)) return undefined;
  // Letters and grades the standard drops above 500 mm deserve to be told apart from blank cells.
  const code = limitsAt(endOfFirstRange / 1000, name) && size > endOfFirstRange / 1000 ? 'zone-ends' : 'zone-undefined';
  return {
    field: fields.zone,
    code,
    data: { got: zoneName(parts.hole, parts.letter, parts.grade), size, nearest: nearestZones(size, parts).join(', ') },
  };
}

/** Same letter at the nearest grades, then the neighbouring letters at the same grade; only what is defined. */
export function nearestZones(size: number, { hole, letter, grade }: ZoneParts): string[] {
  const defined = (l: string, g: string) => limitsAt(size, zoneName(hole, l, g)) !== undefined;
  const atGrade = letterPlace(letter);
  const near = new Set<string>();
  for (const g of outwards(grades, gradePlace(grade), (g) => defined(letter, g))) near.add(zoneName(hole, letter, g));
  for (const l of outwards(letters, atGrade, (l) => defined(l, grade))) near.add(zoneName(hole, l, grade));
  if (near.size > 0) return [...near];
  // Neither the letter nor the grade is there: the nearest letter at its nearest grade.
  const other = outwards(letters, atGrade, (l) => grades.some((g) => defined(l, g)))[0];
  if (other === undefined) return [];
  return outwards(grades, gradePlace(grade), (g) => defined(other, g)).map((g) => zoneName(hole, other, g));
}

/** The first that fits below `place` and the first above it. */
function outwards<T>(list: readonly T[], place: number, fits: (item: T) => boolean): T[] {
  const below = list.filter((item, i) => i < place && fits(item)).at(-1);
  const above = list.find((item, i) => i >= place && fits(item));
  return [below, above].filter((item): item is T => item !== undefined);
}

function gradePlace(grade: string): number {
  const at = (grades as readonly string[]).indexOf(grade);
  return at < 0 ? grades.length : at;
}

/** Where a letter stands, or would stand: the standard uses no i, l, o, q or w. */
function letterPlace(letter: string): number {
  const at = (letters as readonly string[]).indexOf(letter);
  return at >= 0 ? at : letters.filter((l) => l < letter || l === 'js').length;
}
