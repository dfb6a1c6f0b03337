import { step, type WorkingStep } from '../../contract/formula.ts';
import type { Fit } from '../limits-fits/index.ts';
import type { Value } from '../../contract/result.ts';
import { ceilingVerdict, housingCeiling, ringCeiling, warmLabel } from '../warming/index.ts';
import { materialOf, temperatureChange } from '../../materials/index.ts';
import type { FitInputs } from './fields.ts';
import { riseToFit } from './formulas.ts';

const degrees = ['°C', '°F'] as const;

/** How hot for the tightest pair; the low end is for the loosest. Housings are warmed empty, rings are warmed for shafts. */
export function warmValues(
  { seat, size, material, sealed, room, gap }: FitInputs,
  fit: Fit,
  working: WorkingStep[],
): Value[] {
  const part = seat === 'housing' ? 'housing' : 'ring';
  const warmed = materialOf(seat === 'housing' ? (material ?? 'aluminium-die-cast') : 'bearing-steel');
  const ceiling = seat === 'housing' ? housingCeiling(material ?? 'aluminium-die-cast') : ringCeiling(sealed ?? true);
  const at = (interference: number) => temperatureChange(size, interference, gap, warmed.alpha);
  const [rise, low] = [at(fit.most), at(fit.least)];
  if (rise > 0) working.push(step(riseToFit, { I_max: fit.most, c: gap, alpha: warmed.alpha, d: size }, rise));
  const source = warmed.alphaSource;
  return [
    {
      kind: 'quantity',
      key: 'warmTemperature',
      label: warmLabel(part, room + rise, ceiling),
      value: room + rise,
      low: room + low,
      high: room + rise,
      units: degrees,
      main: true,
      source,
    },
    {
      kind: 'quantity',
      key: 'warmRise',
      label: 'Temperature rise',
      value: rise,
      low,
      high: rise,
      units: ['°C diff', '°F diff'],
      source,
    },
    ceilingVerdict(part, room + rise, room, ceiling, sealed ?? true),
  ];
}
