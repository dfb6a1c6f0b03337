import { step, type WorkingStep } from '../../contract/formula.ts';
import type { Value } from '../../contract/result.ts';
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

/** Time from taking the part out until its gap is gone. Nothing to say when it never closes or never opens. */
export function openTimeValues(
  { wall, material, diameter, interference, rise }: Waiting,
  working: WorkingStep[],
): Value[] {
  const closed = interference / (material.alpha * diameter);
  if (interference < hair || rise <= closed) return [];
  const at = (transfer: number) => coolingTime(wall, material.density, material.heat, transfer, rise, closed);
  const time = at(airCooling.usual);
  working.push(
    step(closingRise, { I: interference, alpha_o: material.alpha, d: diameter }, closed),
    step(
      openTime,
      { rho: material.density, c_p: material.heat, w: wall, h: airCooling.usual, dT_h: rise, dT_z: closed },
      time,
    ),
  );
  const low = at(airCooling.high);
  return [
    {
      kind: 'quantity',
      key: 'openTime',
      label: 'Stays open in still air, about',
      value: time,
      low,
      high: at(airCooling.low),
      units: ['min', 'min'],
      decimals: [1, 1],
      note: 'An estimate: one temperature throughout, nothing cold touching it.',
    },
    {
      kind: 'verdict',
      key: 'openVerdict',
      label: 'Time to fit it',
      code: low < 60 ? 'open-time-short' : 'open-time-fair',
      level: low < 60 ? 'caution' : 'note',
    },
  ];
}
