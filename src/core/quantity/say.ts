/** What was read, said back to the one who typed it. */
import { toUnit, unitLabel, type UnitKey } from './units.ts';

/**
 * A quantity as it was read: in the unit that was typed, and in the unit of the box where that is another.
 * @param si the quantity [SI] @param typed unit it was written in @param shown unit of the box
 * @returns text in at most eight figures, units as people write them
 * Example: sayQuantity(0.0301625, 'in', 'mm') -> '1.1875 in = 30.1625 mm'.
 * Example: sayQuantity(50, '°C diff', '°C diff') -> '50 °C'.
 */
export function sayQuantity(si: number, typed: UnitKey, shown: UnitKey): string {
  const one = (key: UnitKey) => `${sayNumber(toUnit(si, key))} ${unitLabel(key)}`.trim();
  return typed === shown ? one(typed) : `${one(typed)} = ${one(shown)}`;
}

/**
 * A number without a thousands mark, in at most eight figures.
 * @param value any number @returns text that `readNumber` reads as that number
 * Example: sayNumber(0.1 + 0.2) -> '0.3'.
 */
export function sayNumber(value: number): string {
  return String(Number(value.toPrecision(8)));
}
