/** One record as text: what it says, under which version of its schema it was written, and when. */

export interface Kind<T> {
  /** Part of the key. */
  readonly name: string;
  readonly version: number;
  /**
   * What was read from the device, as a T. Called with data of this version or an older one, which it brings up to
   * date; answers nothing when the data is not what it should be.
   */
  readonly read: (data: unknown, version: number) => T | undefined;
  /** Parts that follow from the others: where two windows differ in them alone, nobody is asked. */
  readonly derived?: readonly string[];
  /** Leaving the page is asked about while a record of this kind could not be kept. */
  readonly precious?: boolean;
}

export type Recorded<T> =
  | { readonly data: T; readonly at: number; readonly bad?: never }
  /** Not a record, or not one of this kind; or written by a newer edition than the page. */
  | { readonly data?: never; readonly at?: never; readonly bad: 'corrupt' | 'newer' };

export function writeRecord<T>(kind: Kind<T>, data: T, at: number): string {
  return JSON.stringify({ v: kind.version, at, data });
}

export function readRecord<T>(kind: Kind<T>, text: string): Recorded<T> {
  try {
    const { v, at, data } = JSON.parse(text) as { v: unknown; at: unknown; data: unknown };
    if (typeof v === 'number' && v > kind.version) return { bad: 'newer' };
    const read = typeof v === 'number' && typeof at === 'number' ? kind.read(data, v) : undefined;
    return read === undefined ? { bad: 'corrupt' } : { data: read, at: at as number };
  } catch {
    return { bad: 'corrupt' };
  }
}

/** True for an object with named parts, which is merged part by part; lists are taken whole. */
export function isParts(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
