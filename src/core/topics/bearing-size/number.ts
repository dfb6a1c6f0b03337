/** The number as it stands on the ring: digits, and letters and signs before and after them. */
import { bearingOf, type Bearing } from './find.ts';
import type { Group } from './tables/clearance.ts';
import type { RingClass } from './tables/ring-tolerances.ts';

/** Let through by the field: four or five digits, with what makers put before and after them. */
export const numberPattern = {
  pattern: '[A-Za-z]{0,4}[\\s-]*\\d{4,5}(?:[^0-9].*)?',
  patternSays: 'four or five figures with what stands round them, like 6205 or 6205-2RS C3',
  maxLength: 30,
} as const;

export interface RingNumber {
  readonly bearing: Bearing;
  /** Clearance group and tolerance class, where they are marked. */
  readonly group?: Group;
  readonly ringClass?: RingClass;
  /** What else stands there: seals, shields, cage, grease. It changes no size. */
  readonly left: string;
}

/** Seals and shields that may follow the digits with nothing between: 62052RS is 6205 with 2RS. */
const closed = /^2(?:RS|RZ|Z)/;

/**
 * Reads the number on a deep-groove ball bearing.
 * @param typed as it stands on the ring, such as "6205-2RS C3"
 * @returns the bearing, clearance group C2, C3 or C4 and class P6 or P5 where marked, and the rest as text; undefined when no bearing
 * of these digits is held
 * Example: "6204 2rs c3" -> 6204, C3, left "2RS". Source: iso-15; C and P marks as iso-5753-1 and iso-492 name them.
 */
export function readNumber(typed: string): RingNumber | undefined {
  const found = /^([A-Z]*)[\s-]*(\d{4,5})(.*)$/.exec(typed.trim().toUpperCase());
  if (!found) return undefined;
  const [, before = '', digits = '', after = ''] = found;
  const whole = bearingOf(digits);
  const short = !whole && closed.test(digits.slice(4) + after) ? bearingOf(digits.slice(0, 4)) : undefined;
  const bearing = whole ?? short;
  if (!bearing) return undefined;
  const rest = short ? digits.slice(4) + after : after;
  const group = /C([234])(?!\d)/.exec(rest);
  const grade = /P([56])(?!\d)/.exec(rest);
  const left = [
    before,
    ...[group, grade].reduce((text, mark) => text.replace(mark?.[0] ?? '', ' '), rest).split(/[\s/,;-]+/),
  ]
    .filter((part) => part !== '')
    .join(' ');
  return {
    bearing,
    left,
    ...(group ? { group: `C${group[1]}` as Group } : {}),
    ...(grade ? { ringClass: `P${grade[1]}` as RingClass } : {}),
  };
}
