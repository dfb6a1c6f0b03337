/** Names of tolerance zones: a letter (or two) and a grade. Capitals are holes, small letters are shafts. */
import { grades } from './tables/it-grades.ts';

// prettier-ignore
export const letters = [
  'a', 'b', 'c', 'cd', 'd', 'e', 'ef', 'f', 'fg', 'g', 'h', 'js', 'j', 'k',
  'm', 'n', 'p', 'r', 's', 't', 'u', 'v', 'x', 'y', 'z', 'za', 'zb', 'zc',
] as const;

export type Letter = (typeof letters)[number];
export type Grade = (typeof grades)[number];

export interface Zone {
  readonly hole: boolean;
  /** In small letters, for holes too. */
  readonly letter: Letter;
  readonly grade: Grade;
  readonly name: string;
}

export interface ZoneParts {
  readonly hole: boolean;
  readonly letter: string;
  readonly grade: string;
}

/** One zone: letters and a grade. */
const one = '([A-Za-z]{1,2})\\s*(\\d{1,2})';
const single = new RegExp(`^\\s*${one}\\s*$`);
const pair = new RegExp(`^\\s*${one}[\\s/-]*${one}\\s*$`);

/**
 * Splits what was typed into letters and grade, whether or not the standard defines them.
 * The first letter decides between hole and shaft, so "Js7", as older books print it, is a hole.
 * A grade with a nought before it ("H07") is read as it is meant; 01 and 0 are grades of their own.
 * @returns undefined when it is not letters followed by a number
 */
export function zoneParts(typed: string): ZoneParts | undefined {
  const found = single.exec(typed);
  return found ? partsOf(found[1], found[2]) : undefined;
}

function partsOf(letter = '', grade = ''): ZoneParts {
  const first = letter.slice(0, 1);
  return {
    hole: first !== first.toLowerCase(),
    letter: letter.toLowerCase(),
    grade: grade.replace(/^0(?=[2-9])/, ''),
  };
}

export interface ZonePair {
  readonly hole: string;
  readonly shaft: string;
}

/**
 * Reads a whole fit: "H7/k6" -> hole H7, shaft k6, in either order.
 * @returns undefined when it is not two zones with a stroke between, or both are of one kind
 */
export function zonePair(typed: string): ZonePair | undefined {
  const found = pair.exec(typed);
  if (!found) return undefined;
  const [a, b] = [partsOf(found[1], found[2]), partsOf(found[3], found[4])];
  if (a.hole === b.hole) return undefined;
  const [hole, shaft] = a.hole ? [a, b] : [b, a];
  return { hole: zoneName(true, hole.letter, hole.grade), shaft: zoneName(false, shaft.letter, shaft.grade) };
}

/** The zone of the hole or of the shaft out of a whole fit; anything else as it stands. Example: "H7/k6", hole -> H7. */
export function halfFor(typed: string, hole: boolean): string {
  const both = zonePair(typed);
  return both ? (hole ? both.hole : both.shaft) : typed;
}

/**
 * True for a letter the code system has, capital for a hole. Example: isLetter('k') -> true. Example:
 * isLetter('i') -> false.
 */
export function isLetter(text: string): text is Letter {
  return (letters as readonly string[]).includes(text);
}

/** True for a grade the code system has. Example: isGrade('7') -> true. Example: isGrade('19') -> false. */
export function isGrade(text: string): text is Grade {
  return (grades as readonly string[]).includes(text);
}

/** A zone as it is written: letter and grade, such as k5 or H7. */
export function zoneName(hole: boolean, letter: string, grade: string): string {
  return `${hole ? letter.toUpperCase() : letter}${grade}`;
}

/** Reads "H7", "js6", "ZA 8". @returns undefined when the letter or the grade is not one of the standard's. */
export function readZone(typed: string): Zone | undefined {
  const parts = zoneParts(typed);
  if (!parts || !isLetter(parts.letter) || !isGrade(parts.grade)) return undefined;
  const { hole, letter, grade } = parts;
  return { hole, letter, grade, name: zoneName(hole, letter, grade) };
}
