/** What water takes of the dust, as published trials found it: a range for a kind of saw, and no curve against the flow. */

export type TriedSaw = 'hand-held' | 'walk-behind';

/** Least and greatest share taken [1]. */
export const takenByWater: Readonly<
  Record<TriedSaw, { readonly least: number; readonly most: number; readonly source: string }>
> = {
  // 85 % in pairs on site (Shepherd and Woskie 2013), 96 % in the laboratory (Thorpe 1999).
  'hand-held': { least: 0.85, most: 0.96, source: 'shepherd-woskie-2013' },
  'walk-behind': { least: 0.5, most: 0.95, source: 'cpwr-walk-behind' },
};

/**
 * What is left of the dust with water on: C = C_dry (1 - r).
 * @param dry C_dry, dust of the dry cut [any] @returns from the best trial to the worst, in the unit of `dry`
 * Example: hand-held, 10 mg/m3 dry -> 0.4 to 1.5. Source: shepherd-woskie-2013, thorpe-1999, cpwr-walk-behind.
 */
export function leftByWater(saw: TriedSaw, dry: number): { readonly least: number; readonly most: number } {
  const { least, most } = takenByWater[saw];
  return { least: dry * (1 - most), most: dry * (1 - least) };
}
