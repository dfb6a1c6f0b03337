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

/**
 * Splits what was typed into letters and grade, whether or not the standard defines them.
 * The first letter decides between hole and shaft, so "Js7", as older books print it, is a hole.
 * @returns undefined when it is not letters followed by a number
 */
export function zoneParts(typed: string): ZoneParts | undefined {
  const found = /^\s*([A-Za-z]{1,2})\s*(\d{1,2})\s*$/.exec(typed);
  const [, letter = '', grade = ''] = found ?? [];
  if (!found) return undefined;
  return { hole: letter[0] !== letter[0]?.toLowerCase(), letter: letter.toLowerCase(), grade };
}

export function isLetter(text: string): text is Letter {
  return (letters as readonly string[]).includes(text);
}

export function isGrade(text: string): text is Grade {
  return (grades as readonly string[]).includes(text);
}

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
