/** The unit system a reader chose, kept on this device. Storage may be shut off; then nothing is kept and nothing breaks. */
import type { UnitSystem } from '../../../core/quantity/index.ts';

const key = 'almanac-units';

export function rememberedUnits(): UnitSystem | undefined {
  try {
    const kept = localStorage.getItem(key);
    return kept === 'metric' || kept === 'inch' ? kept : undefined;
  } catch {
    return undefined;
  }
}

export function rememberUnits(system: UnitSystem): void {
  try {
    localStorage.setItem(key, system);
  } catch {
    // Private windows refuse; the switch still works for this page.
  }
}
