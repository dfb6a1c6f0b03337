/**
 * Sizes and codes in a question: the number on a bearing, caliper readings, a zone of ISO 286, a mix ratio, a thread, a
 * blade. Each leads to its page, and where what was typed is all the answer needs, to the calculator filled with it.
 *
 * A blade with its marked surface speed leads to its row of the table, which holds the answer, and to the calculator
 * with these two boxes filled and all others empty: what turns the blade is the reader's to say before any verdict.
 */
import { plain, type Speech } from '../../words/say/speech.ts';
import { normalized } from '../language/words-of.ts';

/** A page a size leads to, from the site's folder; the strongest first. */
export interface Pin {
  readonly page: string;
  readonly weight: number;
}

/** A calculator with its boxes filled, or the row of a table. */
export interface Offer {
  readonly page: string;
  /** Key of a field -> what goes into its box. */
  readonly figures: Readonly<Record<string, string>>;
  /** The figures as they are said in the link. */
  readonly said: string;
}

export interface Sizes {
  readonly pins: readonly Pin[];
  readonly offers: readonly Offer[];
}

/** A part with one of these is a complaint, not a size to look up. */
const inTrouble =
  /\b(?:broken?|broke|loose|stuck|crack\w*|jammed|worn|rot[oa]|suelt[oa]|trabad[oa]|atascad[oa]|gastad[oa])\b/;
const fuelWords = /\b(?:fuel|gas|gasoline|petrol|ethanol|gasolina|etanol|nafta)\b/;
const none: Sizes = { pins: [], offers: [] };

/** @param inUse whether a word stands in a title, another word or a heading of some page */
export function readSizes(question: string, inUse: (word: string) => boolean, speech: Speech = plain): Sizes {
  const text = normalized(question, speech);
  if (inTrouble.test(text)) return none;
  const found = [
    ring(question, text),
    readings(text),
    zone(question, text, inUse),
    mix(text),
    thread(text),
    blade(text),
  ];
  return { pins: found.flatMap((f) => f.pins), offers: found.flatMap((f) => f.offers) };
}

const bearingSize = 'calculators/bearing-size.html';
const boltPages = [
  { page: 'tables/bolt-torques.html', weight: 3.1 },
  { page: 'calculators/bolt-torque.html', weight: 3 },
];
const rotation = 'tables/blade-rotation-limits.html';
/** Blades the rotation table has a row for, each with the anchor "350-mm" or "14-in". */
export const tabledBlades: Readonly<Record<'mm' | 'in', readonly string[]>> = {
  mm: '100 115 125 150 180 230 300 350 400 450 500 600 700 800 900 1000'.split(' '),
  in: '4 4.5 5 6 7 8 9 10 12 14 16 18 20 24 26 30 36'.split(' '),
};

/** 6205, 6205-2RS C3, 6204ZZ, 61904: the five series the calculator holds; "6000 rpm" is no bearing. */
function ring(question: string, text: string): Sizes {
  if (
    /\b\d+ (?:rpm|psi|bar|hours?|horas?|ft|feet|usd|m|mm|hz)\b/.test(text) &&
    !/bearing|\b\d+[- ]?(?:2rs|zz)/.test(text)
  )
    return none;
  const written = /\b(?:6[023]\d\d|61[89]\d\d)(?![\d.,:/])(?:[- ]?(?:2rs|rs|2rz|2z|zz|z)\b)?(?:[- ]?c[2345]\b)?/i.exec(
    question,
  );
  if (!written) return none;
  const designation = written[0].toUpperCase().replace(/ (?=2RS|RS|2RZ|2Z|ZZ|Z)/, '-');
  return {
    pins: [{ page: bearingSize, weight: 3 }],
    offers: [{ page: bearingSize, figures: { known: 'designation', designation }, said: designation }],
  };
}

const number = String.raw`(\d+(?:[.,]\d+)?)`;

/** 25 x 52 x 15: bore, outside, width. Two numbers alone may be anything. */
function readings(text: string): Sizes {
  const [, bore = '', outside = '', width = ''] = new RegExp(`${number} x ${number} x ${number}`).exec(text) ?? [];
  const size = (written: string) => Number(written.replace(',', '.'));
  if (bore === '')
    return text.includes(' x ') && /bearing|rodamiento|balero|ruleman/.test(text)
      ? { pins: [{ page: bearingSize, weight: 3 }], offers: [] }
      : none;
  if (!(size(bore) < size(outside) && size(width) < size(outside))) return none;
  const unit = /\d in\b/.test(text) ? 'in' : 'mm';
  const figures = {
    known: 'readings',
    bore: `${bore} ${unit}`,
    outside: `${outside} ${unit}`,
    width: `${width} ${unit}`,
  };
  return {
    pins: [{ page: bearingSize, weight: 3 }],
    offers: [{ page: bearingSize, figures, said: `${bore} x ${outside} x ${width} ${unit}` }],
  };
}

/** H7, k6, JS6. Not M and C, which are threads and clearances; not E beside fuel. */
function zone(question: string, text: string, inUse: (word: string) => boolean): Sizes {
  const [, letters = '', grade = ''] = /\b(js|[abdefghjknprs])(5|6|7|8|9|1[01])\b/i.exec(question) ?? [];
  if (letters === '' || (/^e/i.test(letters) && fuelWords.test(text))) return none;
  const name = `${letters}${grade}`;
  const rest = text.replace(name.toLowerCase(), ' ');
  const [, size = '', unit = 'mm'] = new RegExp(`\\b${number}(?: (mm|in))?(?= |$)`).exec(rest) ?? [];
  // E10 without a size is fuel.
  if (size === '' && (/^e/i.test(letters) || !inUse(name.toLowerCase()))) return none;
  const pins = [
    { page: 'calculators/limits-fits.html', weight: 3 },
    { page: 'tables/bearing-seat-fits.html', weight: 2.7 },
  ];
  if (size === '') return { pins, offers: [] };
  const figures = { size: `${size} ${unit}`, zone: name };
  return { pins, offers: [{ page: 'calculators/limits-fits.html', figures, said: `${name}, ${size} ${unit}` }] };
}

/** 50:1, 1:50, with a volume of gasoline. */
function mix(text: string): Sizes {
  const [, parts = '', turned = ''] = /\b(\d{2,3}):1\b|\b1:(\d{2,3})\b/.exec(text) ?? [];
  const ratio = Number(parts || turned);
  const [, volume = '', unit = ''] = new RegExp(`${number} (l|gal)\\b`).exec(text) ?? [];
  const asked = /\b(?:oil|mix|aceite|mezcla|ratio)\b/.test(text) && /\b(?:gal|l)\b/.test(text);
  if (!(ratio >= 10 && ratio <= 200))
    return asked ? { pins: [{ page: 'calculators/fuel-mix.html', weight: 1.5 }], offers: [] } : none;
  const pins = [{ page: 'calculators/fuel-mix.html', weight: 3 }];
  if (volume === '') return { pins, offers: [] };
  const fuel = `${volume} ${unit === 'l' ? 'L' : unit}`;
  const figures = { ratio: `${ratio}:1`, known: 'fuel', fuel };
  return { pins, offers: [{ page: 'calculators/fuel-mix.html', figures, said: `${ratio}:1, ${fuel}` }] };
}

/** M8, 10.9: the torque needs the class, the state of the thread and the joint, so the boxes are left to the reader. */
function thread(text: string): Sizes {
  const named = /\bm(?:3|4|5|6|8|10|12|14|16|20|24)\b/.test(text) || /\b(?:8\.8|10\.9|12\.9)(?: |$)/.test(text);
  return named ? { pins: boltPages, offers: [] } : none;
}

/** A blade by its diameter, or a marked speed. */
function blade(text: string): Sizes {
  const [, speed] = /\b(50|63|80|100) m\/s/.exec(text) ?? [];
  const [, size = '', unit = ''] = new RegExp(`${number} (mm|in)\\b`).exec(text) ?? [];
  const asked =
    /\b(?:blades?|dis[ck]s?|wheels?|rpm|discos?|revoluciones)\b/.test(text) && !/depth|deep|profund/.test(text);
  const usual = unit === 'in' && /^(?:12|14|16|18|20|24)$/.test(size) && /^[\d a-z]{0,8}$/.test(text.trim());
  if (speed === undefined && !(size !== '' && asked) && !usual) return none;
  const row = unit !== '' && tabledBlades[unit as 'mm' | 'in'].includes(size);
  const offers: Offer[] = row ? [{ page: `${rotation}#${size}-${unit}`, figures: {}, said: `${size} ${unit}` }] : [];
  if (speed !== undefined && size !== '') {
    const figures = { diameter: `${size} ${unit}`, markedAs: 'speed', markedSpeed: `${speed} m/s` };
    offers.push({ page: 'calculators/blade-speed.html', figures, said: `${size} ${unit}, ${speed} m/s` });
  }
  return { pins: [{ page: rotation, weight: 3 }], offers };
}
