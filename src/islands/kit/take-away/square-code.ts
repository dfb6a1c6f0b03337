/** A square code as a drawing; its encoder comes when something is printed. */
import { encode } from 'uqr';

export interface SquareCode {
  readonly size: number;
  /** Path of the dark squares, one unit each. */
  readonly path: string;
}

/** @param text an address; a long one gives more and finer squares @returns the code, or nothing when no code holds so much */
export function squareCode(text: string): SquareCode | undefined {
  try {
    const { size, data } = encode(text, { border: 2, ecc: 'L' });
    const path = data.flatMap((row, y) => row.flatMap((dark, x) => (dark ? [`M${x} ${y}h1v1h-1z`] : []))).join('');
    return { size, path };
  } catch {
    return undefined;
  }
}
