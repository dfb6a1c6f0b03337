/** Writes SI numbers for people. Rounding happens here and nowhere else. */
import { toUnit, unitLabel, unitOf, type UnitKey } from './units.ts';

export type UnitSystem = 'metric' | 'inch';
export type UnitPair = readonly [UnitKey, UnitKey];

/** Of a pair [metric, inch], the one for the reader's system. */
export function pick<T>(pair: readonly [T, T], system: UnitSystem): T {
  return system === 'metric' ? pair[0] : pair[1];
}

/** Fixed decimals when given, else four significant figures; no trailing point, a real minus sign. */
export function formatNumber(value: number, decimals?: number): string {
  const text = decimals === undefined ? plain(value) : value.toFixed(decimals);
  const zero = /^-0(?:\.0*)?$/.test(text) ? text.slice(1) : text;
  return zero.replace('-', '−');
}

function plain(value: number): string {
  if (value === 0) return '0';
  const rounded = Number(value.toPrecision(4));
  const size = Math.abs(rounded);
  if (size >= 1e7 || size < 1e-5) return rounded.toExponential().replace(/e\+?(-?\d+)/, 'e$1');
  return Math.abs(value) >= 1000 ? String(Math.round(value)) : String(rounded);
}

/** Made once: making one takes longer than a hundred numbers written with it. */
const grouped = new Intl.NumberFormat('en');

/**
 * A number in so many significant figures, thousands set apart where there are more than four digits.
 * Example: formatFigures(436678, 2) -> '440,000'; formatFigures(2.576, 2) -> '2.6'; formatFigures(0.0312, 2) -> '0.031'.
 */
export function formatFigures(value: number, figures: number): string {
  const rounded = Number(value.toPrecision(figures));
  const size = Math.abs(rounded);
  if (size < 1e4 || size >= 1e15) return formatNumber(rounded, size < 1e4 && Number.isInteger(rounded) ? 0 : undefined);
  return grouped.format(rounded).replace('-', '−');
}

/** An SI number in one unit, with the unit behind it: formatIn(0.0254, 'in') -> 1 in. */
export function formatIn(si: number, unit: UnitKey, decimals?: number, figures?: number): string {
  const label = unitLabel(unit);
  const number =
    figures === undefined
      ? formatNumber(toUnit(si, unit), decimals ?? unitOf(unit).decimals)
      : formatFigures(toUnit(si, unit), figures);
  if (label === '') return number;
  return label === '°' ? `${number}°` : `${number}\u00a0${label}`;
}

/** An SI number in the reader's unit of a pair, rounded as the unit or `decimals` say. */
export function formatQuantity(
  si: number,
  units: UnitPair,
  system: UnitSystem,
  decimals?: readonly [number, number],
  figures?: number,
): string {
  return formatIn(si, pick(units, system), decimals && pick(decimals, system), figures);
}
