/** How hot a part may be made, and which way out is left when that is not enough. */
import type { Value } from '../../contract/result.ts';
import { type MaterialKey, materialOf } from '../../materials/index.ts';

const zeroC = 273.15;

/** [K] with source ids. */
export const ceilings = {
  /** Open bearing ring: a US Army manual heats in oil to 250 °F. */
  openRing: { temperature: zeroC + 121, source: 'army-tm-bearing-heating' },
  /** Seals and grease are the limit, not the steel. */
  sealedRing: { temperature: zeroC + 80, source: 'sealed-bearing-heat' },
  /** Cast light-alloy housings. */
  lightHousing: { temperature: zeroC + 100, source: 'housing-heating' },
  /** Iron and steel housings: the paint, sealant and seals left in them are the limit. */
  ironHousing: { temperature: zeroC + 120, source: 'common-practice' },
} as const;

export interface Ceiling {
  readonly temperature: number;
  readonly source: string;
}

/** Highest temperature of an empty housing [K]: 100 °C for light alloy, 120 °C for iron and steel. */
export function housingCeiling(material: MaterialKey): Ceiling {
  return materialOf(material).light ? ceilings.lightHousing : ceilings.ironHousing;
}

/** Highest temperature of a bearing [K]: 80 °C sealed or greased, 121 °C open. */
export function ringCeiling(sealed: boolean): Ceiling {
  return sealed ? ceilings.sealedRing : ceilings.openRing;
}

/** A temperature past the ceiling is named as a need, not as a thing to do. */
export function warmLabel(part: 'housing' | 'ring', needed: number, ceiling: Ceiling): string {
  const name = part === 'housing' ? 'housing' : 'bearing';
  return needed > ceiling.temperature ? `Warmth alone would take the ${name} to` : `Warm the ${name} to`;
}

/** Whether the temperature needed is allowed, and what to do when not. */
export function ceilingVerdict(
  part: 'housing' | 'ring',
  needed: number,
  room: number,
  ceiling: Ceiling,
  sealed: boolean,
): Value {
  const base = {
    kind: 'verdict',
    key: 'warmVerdict',
    label: 'Can it be warmed that far',
    main: true,
    data: { needed, ceiling: ceiling.temperature },
    source: ceiling.source,
  } as const;
  if (needed <= room + 0.5) return { ...base, code: 'warm-not-needed', level: 'good' };
  if (needed <= ceiling.temperature)
    return { ...base, code: part === 'housing' ? 'warm-housing-ok' : 'warm-ring-ok', level: 'good' };
  if (part === 'housing') return { ...base, code: 'warm-housing-over', level: 'stop' };
  return { ...base, code: sealed ? 'warm-sealed-over' : 'warm-ring-over', level: 'stop' };
}
