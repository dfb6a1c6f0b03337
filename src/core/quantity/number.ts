/**
 * Reads the number at the start of a typed text: "25.4", "25,4", "3/16", "1-3/16", "1 3/16", "9 500", "1,450.00".
 * A thousands mark is read only where no other reading is left; "9,500" alone is both 9.5 and 9500, and the
 * caller, who knows the limits of the box, chooses or asks.
 */
export type NumberRead =
  | {
      readonly ok: true;
      readonly value: number;
      readonly rest: string;
      /** A thousands mark was passed over: the reader should be told what was read. */
      readonly grouped?: true;
    }
  | {
      readonly ok: false;
      readonly code: 'not-a-number' | 'two-points' | 'mixed-fraction' | 'zero-denominator';
    }
  | {
      readonly ok: false;
      readonly code: 'two-readings';
      /** The whole text written again, once for each reading: first the decimal comma, then the thousands mark. */
      readonly readings: readonly [string, string];
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

/**
 * One spelling for each sign: plain spaces, hyphen-minus, slash, written-out fractions; no diameter sign in front.
 * @param text as typed @returns the same text, trimmed, with one sign for each meaning
 * Example: normalise('1⅜ in') -> '1 3/8 in'. Example: normalise('Ø 350 mm') -> '350 mm'.
 */
export function normalise(text: string): string {
  return text
    .replace(/[\u00a0\u2007\u2009\u202f]/g, ' ')
    .replace(/[\u2212\u2010\u2011\u2013]/g, '-')
    .replace(/\u2044/g, '/')
    .replace(/(\d?)([½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞])/g, (_, digit: string, f: string) =>
      digit ? `${digit} ${vulgar[f]}` : `${vulgar[f]}`,
    )
    .trim()
    .replace(/^[Øø⌀∅]\s*/, '');
}

/**
 * The number a text begins with, and what stands behind it. Read: whole numbers, decimals with point or comma,
 * fractions, mixed fractions, a power of ten, and thousands marks where only they can be meant.
 * @param text one that has gone through `normalise`
 * @returns the value [as typed, no unit] and the rest of the text; or why it is no number. Never throws.
 * Example: readNumber('1-3/16 in') -> { ok: true, value: 1.1875, rest: ' in' }.
 * Example: readNumber('9,500 rpm').readings -> ['9.500 rpm', '9500 rpm'].
 */
export function readNumber(text: string): NumberRead {
  const sign = /^([+-])\s*/.exec(text);
  const factor = sign?.[1] === '-' ? -1 : 1;
  const body = sign ? text.slice(sign[0].length) : text;

  const mixed = /^(\d+)(?:-|\s+)(\d+)\s*\/\s*(\d+)(?![\d.,])/.exec(body);
  if (mixed) {
    const [whole, top, bottom] = [Number(mixed[1]), Number(mixed[2]), Number(mixed[3])];
    if (bottom === 0) return { ok: false, code: 'zero-denominator' };
    if (top >= bottom) return { ok: false, code: 'mixed-fraction' };
    return finite(factor * (whole + top / bottom), body.slice(mixed[0].length));
  }
  const fraction = /^(\d+)\/(\d+)(?![\d.,])/.exec(body);
  if (fraction) {
    if (Number(fraction[2]) === 0) return { ok: false, code: 'zero-denominator' };
    return finite((factor * Number(fraction[1])) / Number(fraction[2]), body.slice(fraction[0].length));
  }
  const marked = withThousandsMarks(body);
  if (marked) return { ok: true, value: factor * marked.value, rest: body.slice(marked.length), grouped: true };
  const decimal = /^[\d.,]*\d[.,]?/.exec(body);
  if (!decimal) return { ok: false, code: 'not-a-number' };
  return readDecimal(decimal[0], body.slice(decimal[0].length), factor, sign?.[0] ?? '');
}

function finite(value: number, rest: string): NumberRead {
  return Number.isFinite(value) ? { ok: true, value, rest } : { ok: false, code: 'not-a-number' };
}

/** "1,234.5", "1.234,5", "1,234,567", "9 500", "1'250": nothing but thousands can be meant by the marks. */
const thousands: readonly { readonly form: RegExp; readonly mark: RegExp }[] = [
  { form: /^\d{1,3}(?:,\d{3})+\.\d*(?![\d.,])/, mark: /,/g },
  { form: /^\d{1,3}(?:\.\d{3})+,\d+(?![\d.,])/, mark: /\./g },
  { form: /^\d{1,3}(?:,\d{3}){2,}(?![\d.,])/, mark: /,/g },
  { form: /^\d{1,3}(?:\.\d{3}){2,}(?![\d.,])/, mark: /\./g },
  { form: /^\d{1,3}(?: \d{3})+(?:[.,]\d+)?(?![\d.,]|\s*\/)/, mark: / /g },
  // Not before a sign of inches: 5'100" would be five feet and a hundred inches.
  { form: /^\d{1,3}(?:['’]\d{3})+(?:[.,]\d+)?(?![\d.,]|\s*["″”'/])/, mark: /['’]/g },
];

function withThousandsMarks(body: string): { value: number; length: number } | undefined {
  for (const { form, mark } of thousands) {
    const found = form.exec(body)?.[0];
    if (found !== undefined && found.length < 100)
      return { value: Number(found.replace(mark, '').replace(',', '.')), length: found.length };
  }
  return undefined;
}

function readDecimal(digits: string, rest: string, factor: number, sign: string): NumberRead {
  const points = digits.split('.').length - 1;
  const commas = digits.split(',').length - 1;
  if (points + commas > 1) return { ok: false, code: 'two-points' };
  // "1,234" is 1.234 to one reader and 1234 to another; "0,375" and "25,4" are not.
  if (/^[1-9]\d{0,2},\d{3}$/.test(digits))
    return {
      ok: false,
      code: 'two-readings',
      readings: [`${sign}${digits.replace(',', '.')}${rest}`, `${sign}${digits.replace(',', '')}${rest}`],
    };
  const power = /^[eE]([+-]?\d{1,2})(?![\d.,])/.exec(rest);
  const value = Number(digits.replace(',', '.') + (power ? `e${power[1]}` : ''));
  return finite(factor * value, power ? rest.slice(power[0].length) : rest);
}
