/** Ratios of so much to one, as people write them: fuel to oil, turns to turns. */
import { normalise, readNumber } from './number.ts';
import { sayNumber } from './say.ts';

export interface RatioRead {
  readonly value: number;
  /** "50:1" */
  readonly said: string;
}

const between = /^(.+?)\s*(?::|\bto\b|\ba\b)\s*(.+)$/i;

/**
 * A ratio of two numbers, "a:b" or "a to b", as a / b.
 * @param text as typed @returns the ratio [1] and how to say it; undefined where the text is no pair of positive numbers
 * Example: readRatio('2.5:1').value -> 2.5. Example: readRatio('1:50').value -> 0.02. Example: readRatio('50') -> undefined.
 */
export function readRatio(text: string): RatioRead | undefined {
  const pair = between.exec(normalise(text));
  const [a, b] = [plain(pair?.[1]), plain(pair?.[2])];
  if (a === undefined || b === undefined) return undefined;
  return { value: a / b, said: `${sayNumber(a)}:${sayNumber(b)}` };
}

/**
 * Parts of the larger share to one of the smaller, whichever way round it is written: a mix of fuel and oil is
 * "50:1" on one can and "1:50" on the next, and "2 %" (one in fifty) on a third.
 * @param text as typed @returns parts to one [1], 1 or more; undefined where the text is none of these
 * Example: readPartsToOne('1:50').value -> 50. Example: readPartsToOne('2 %').said -> '50:1'.
 */
export function readPartsToOne(text: string): RatioRead | undefined {
  const percent = /^(.+?)\s*(?:%|percent|per cent|por ciento)$/i.exec(normalise(text));
  const share = plain(percent?.[1]);
  // "1/50" on a can is the same mix, though it reads as a fraction.
  const ratio = share === undefined ? (readRatio(text) ?? readRatio(text.replace('/', ':')))?.value : share / 100;
  if (ratio === undefined) return undefined;
  const value = ratio < 1 ? 1 / ratio : ratio;
  return { value, said: `${sayNumber(value)}:1` };
}

/**
 * A share said as "1 in 10" or "1 out of 10".
 * @param text as typed @returns the share [1]; undefined where the text is none, or more than all
 * Example: readShare('1 in 10') -> 0.1. Example: readShare('3 in 2') -> undefined.
 */
export function readShare(text: string): number | undefined {
  const pair = /^(.+?)\s+(?:in|out of|de cada|de|en)\s+(.+)$/i.exec(normalise(text));
  const [a, b] = [plain(pair?.[1]), plain(pair?.[2])];
  return a === undefined || b === undefined || a > b ? undefined : a / b;
}

/** A positive number with nothing behind it. */
function plain(text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  const read = readNumber(text.trim());
  return read.ok && read.rest.trim() === '' && read.value > 0 ? read.value : undefined;
}
