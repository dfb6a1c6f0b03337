/** Service factor: how much rougher than even running the work is. */

export type Driver = 'single' | 'multi' | 'motor';
export type Hours = 'short' | 'day' | 'long';
export type Load = 'light' | 'medium' | 'heavy' | 'crushing';

/** Rows up to heavy: service-factor-table. Crushing: the row was not seen and stands from memory (service-factor-crushing). */
const normal: Readonly<Record<Load, readonly [number, number, number]>> = {
  light: [1, 1.1, 1.2],
  medium: [1.1, 1.2, 1.3],
  heavy: [1.2, 1.3, 1.4],
  crushing: [1.3, 1.4, 1.5],
};
const rough: Readonly<Record<Load, readonly [number, number, number]>> = {
  light: [1.1, 1.2, 1.3],
  medium: [1.2, 1.3, 1.4],
  heavy: [1.4, 1.5, 1.6],
  crushing: [1.5, 1.6, 1.8],
};

/**
 * Service factor by engine, work and hours a day.
 * Single-cylinder engines stand in the high-torque columns, engines with more cylinders in the normal ones.
 * @returns factor [1], 1.0 to 1.8
 * Example: single cylinder, heavy, 3 to 5 h a day -> 1.4. Concrete saws are in no table: "heavy" is a judgement.
 */
export function serviceFactor(driver: Driver, load: Load, hours: Hours): number {
  const row = (driver === 'single' ? rough : normal)[load];
  return row[hours === 'short' ? 0 : hours === 'day' ? 1 : 2];
}

/** Id of the source a service factor is from, by the load. */
export function serviceSource(load: Load): string {
  return load === 'crushing' ? 'service-factor-crushing' : 'service-factor-table';
}
