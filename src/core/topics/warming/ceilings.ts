/** How hot a part may be made, and which way out is left when that is not enough. */
import type { VerdictValue } from '../../contract/result.ts';
import { type MaterialKey, materialOf } from '../../materials/index.ts';
import { fromUnit } from '../../quantity/index.ts';
import { isOver } from '../../thresholds/index.ts';

const celsius = (t: number) => fromUnit(t, '°C');

/** [K] with source ids. */
export const ceilings = {
  /** Open bearing ring: a US Army manual heats in oil to 250 °F. */
  openRing: { temperature: fromUnit(250, '°F'), source: 'army-tm-bearing-heating' },
  /** Seals and grease are the limit, not the steel. */
  sealedRing: { temperature: celsius(80), source: 'sealed-bearing-heat' },
  /** Cast light-alloy housings. */
  lightHousing: { temperature: celsius(100), source: 'housing-heating' },
  /** Iron and steel housings: the paint, sealant and seals left in them are the limit. */
  ironHousing: { temperature: celsius(120), source: 'common-practice' },
} as const;

/** Less than a shop's thermometer shows, and more than 250 °F loses on its way through kelvins [K]. */
export const ceilingSlack = 0.05;

/** A part this little over the room is not worth warming: half a degree, our choice [K]. */
export const worthWarming = 0.5;

export interface Ceiling {
  /** [K] */
  readonly temperature: number;
  readonly source: string;
}

/** Highest temperature of an empty housing [K]: 100 °C for light alloy, 120 °C for iron and steel. */
export function housingCeiling(material: MaterialKey): Ceiling {
  return materialOf(material).light ? ceilings.lightHousing : ceilings.ironHousing;
}

/** Highest temperature of a bearing [K]: 80 °C sealed or greased, 250 °F (121.1 °C) open. */
export function ringCeiling(sealed: boolean): Ceiling {
  return sealed ? ceilings.sealedRing : ceilings.openRing;
}

/**
 * Whether a temperature is past a ceiling, by more than a thermometer shows: t > ceiling + 0.05 K.
 * @param temperature [K] @param ceiling of the part
 * Example: 212 °F for a light housing -> false; 100.1 °C -> true. Source: arithmetic.
 */
export function isPast(temperature: number, { temperature: most }: Ceiling): boolean {
  return isOver(temperature, most + ceilingSlack);
}

/** A temperature past the ceiling is named as a need, not as a thing to do; so is one that is no need at all. */
export function warmLabel(part: 'housing' | 'ring', needed: number, ceiling: Ceiling, slides = false): string {
  if (slides) return 'The gap asked for would take';
  const name = part === 'housing' ? 'housing' : 'bearing';
  return isPast(needed, ceiling) ? `Warmth alone would take the ${name} to` : `Warm the ${name} to`;
}

/** A ring that is looser than its seat everywhere goes in by hand: warmth is no need, only the gap asked for. */
export function slidesByHand(verdict: VerdictValue): VerdictValue {
  if (verdict.code === 'warm-not-needed') return verdict;
  return { ...verdict, label: 'Fitting the ring', code: 'warm-slides', level: 'note' };
}

/**
 * Whether the temperature needed is allowed, and what to do when not.
 * @param part which part is warmed @param needed [K] @param room [K] @param ceiling of the part @param sealed sealed or greased bearing
 */
export function ceilingVerdict(
  part: 'housing' | 'ring',
  needed: number,
  room: number,
  ceiling: Ceiling,
  sealed: boolean,
): VerdictValue {
  const base = {
    kind: 'verdict',
    key: 'warmVerdict',
    label: 'Can it be warmed that far',
    main: true,
    data: { needed, ceiling: ceiling.temperature },
    source: ceiling.source,
  } as const;
  if (!isOver(needed, room + worthWarming)) return { ...base, code: 'warm-not-needed', level: 'good' };
  if (!isPast(needed, ceiling))
    return { ...base, code: part === 'housing' ? 'warm-housing-ok' : 'warm-ring-ok', level: 'good' };
  if (part === 'housing') return { ...base, code: 'warm-housing-over', level: 'stop' };
  return { ...base, code: sealed ? 'warm-sealed-over' : 'warm-ring-over', level: 'stop' };
}
