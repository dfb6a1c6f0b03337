/**
 * Reads the number at the start of a typed text: "25.4", "25,4", "3/16", "1-3/16", "1 3/16".
 * A separator that two people would read two ways is refused, not guessed.
 */
export type NumberRead =
  | { readonly ok: true; readonly value: number; readonly rest: string }
  | {
      readonly ok: false;
      readonly code: 'not-a-number' | 'two-points' | 'two-readings' | 'mixed-fraction' | 'zero-denominator';
    };

const vulgar: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** One spelling for each sign: plain spaces, hyphen-minus, slash, written-out fractions. */
export function normalise(text: string): string {
  return text
    .replace(/[\u00a0\u2007\u2009\u202f]/g, ' ')
    .replace(/[\u2212\u2010\u2011\u2013]/g, '-')
    .replace(/\u2044/g, '/')
    .replace(/(\d?)([½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞])/g, (_, digit: string, f: string) =>
      digit ? `${digit} ${vulgar[f]}` : `${vulgar[f]}`,
    )
    .trim();
}

export function readNumber(text: string): NumberRead {
  const sign = /^([+-])\s*/.exec(text);
  const factor = sign?.[1] === '-' ? -1 : 1;
  const body = sign ? text.slice(sign[0].length) : text;

  const mixed = /^(\d+)(?:-|\s+)(\d+)\s*\/\s*(\d+)(?![\d.,])/.exec(body);
  if (mixed) {
    const [whole, top, bottom] = [Number(mixed[1]), Number(mixed[2]), Number(mixed[3])];
    if (bottom === 0) return { ok: false, code: 'zero-denominator' };
    if (top >= bottom) return { ok: false, code: 'mixed-fraction' };
    return { ok: true, value: factor * (whole + top / bottom), rest: body.slice(mixed[0].length) };
  }
  const fraction = /^(\d+)\/(\d+)(?![\d.,])/.exec(body);
  if (fraction) {
    if (Number(fraction[2]) === 0) return { ok: false, code: 'zero-denominator' };
    return {
      ok: true,
      value: (factor * Number(fraction[1])) / Number(fraction[2]),
      rest: body.slice(fraction[0].length),
    };
  }
  const decimal = /^[\d.,]*\d[.,]?/.exec(body);
  if (!decimal) return { ok: false, code: 'not-a-number' };
  // "1'000" is a thousand to one reader and a foot to another.
  if (/^['’]\d{3}(?!\d|\s*["″”'/])/.test(body.slice(decimal[0].length))) return { ok: false, code: 'two-readings' };
  return readDecimal(decimal[0], body.slice(decimal[0].length), factor);
}

function readDecimal(digits: string, rest: string, factor: number): NumberRead {
  const points = digits.split('.').length - 1;
  const commas = digits.split(',').length - 1;
  if (points > 0 && commas > 0) return { ok: false, code: 'two-readings' };
  if (points > 1) return { ok: false, code: 'two-points' };
  // "1,234" is 1.234 to one reader and 1234 to another; "0,375" and "25,4" are not.
  if (commas > 1 || /^[1-9]\d{0,2},\d{3}$/.test(digits)) return { ok: false, code: 'two-readings' };
  const power = /^[eE]([+-]?\d{1,2})(?![\d.,])/.exec(rest);
  const value = Number(digits.replace(',', '.') + (power ? `e${power[1]}` : ''));
  if (!Number.isFinite(value)) return { ok: false, code: 'not-a-number' };
  return { ok: true, value: factor * value, rest: power ? rest.slice(power[0].length) : rest };
}
