import { step, type WorkingStep } from '../../contract/formula.ts';
import type { Value } from '../../contract/result.ts';
import { isOver, isUnder } from '../../thresholds/index.ts';
import { airCooling, coolingTime } from './cooling-time.ts';
import { closingRise, openTime } from './formulas.ts';
import type { Material } from '../../materials/index.ts';

export interface Waiting {
  readonly wall: number;
  readonly material: Material;
  readonly diameter: number;
  readonly interference: number;
  /** Warmed over the room by [K]. */
  readonly rise: number;
}

/** A hundredth of a micrometre: a fit that slight never closes on anybody. */
const hair = 1e-8;

/** Under a minute nobody walks over, aligns and seats a part in peace: our choice [s]. */
const shortTime = 60;

export interface OpenTime {
  readonly values: readonly Value[];
  readonly steps: readonly WorkingStep[];
}

/** Time from taking the part out until its gap is gone. Nothing to say when it never closes or never opens. */
export function openTimeValues({ wall, material, diameter, interference, rise }: Waiting): OpenTime {
  const closed = interference / (material.alpha * diameter);
  if (isUnder(interference, hair) || !isOver(rise, closed)) return { values: [], steps: [] };
  const at = (transfer: number) => coolingTime(wall, material.density, material.heat, transfer, rise, closed);
  const time = at(airCooling.usual);
  const steps = [
    step(closingRise, { I: interference, alpha_o: material.alpha, d: diameter }, closed),
    step(
      openTime,
      { rho: material.density, c_p: material.heat, w: wall, h: airCooling.usual, dT_h: rise, dT_z: closed },
      time,
    ),
  ];
  const low = at(airCooling.high);
  const short = isUnder(low, shortTime);
  const values: Value[] = [
    {
      kind: 'quantity',
      key: 'openTime',
      label: 'Stays open in still air, about',
      value: time,
      low,
      high: at(airCooling.low),
      units: ['min', 'min'],
      figures: 2,
      note: 'An estimate: one temperature throughout, nothing cold touching it.',
    },
    {
      kind: 'verdict',
      key: 'openVerdict',
      label: 'Time to fit it',
      code: short ? 'open-time-short' : 'open-time-fair',
      level: short ? 'caution' : 'note',
    },
  ];
  return { values, steps };
}
