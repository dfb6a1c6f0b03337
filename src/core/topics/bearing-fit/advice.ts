/** What the table recommends and why, what a warm housing leaves of the fit, and how warm to make a part to fit it. */
import { step, type WorkingStep } from '../../contract/formula.ts';
import type { Value } from '../../contract/result.ts';
import { growth, materialOf, temperatureChange, warmLoss } from '../../materials/index.ts';
import { isOver, isUnder } from '../../thresholds/index.ts';
import { kindOfFit, type Fit } from '../limits-fits/index.ts';
import { ceilingVerdict, housingCeiling, ringCeiling, slidesByHand, warmLabel } from '../warming/index.ts';
import type { FitInputs } from './fields.ts';
import { lostWarm, riseToFit } from './formulas.ts';
import { tighterHousings, type Advice } from './recommend.ts';
import { ringFit } from './seat.ts';

/** A part of an answer: its values and the lines of working behind them. */
export interface Part {
  readonly values: readonly Value[];
  readonly steps: readonly WorkingStep[];
}

export const nothing: Part = { values: [], steps: [] };

const degrees = ['°C', '°F'] as const;
const diff = ['°C diff', '°F diff'] as const;

/** The zone the table recommends, the reason, and what it says of split housings and shafts. @param used the zone held to */
export function adviceValues(inputs: FitInputs, advice: Advice, used: string): Value[] {
  const footnote = {
    kind: 'verdict',
    key: 'footnote',
    label: 'Shaft',
    code: 'solid-steel-only',
    level: 'note',
  } as const;
  return [
    {
      kind: 'text',
      key: 'advisedZone',
      label: 'Zone the table recommends',
      value: advice.zone,
      source: advice.source,
      main: true,
    },
    { kind: 'verdict', key: 'reason', label: 'Why', code: advice.reason, level: 'note', source: advice.source },
    ...splitVerdict(inputs, [advice.zone, used]),
    ...(inputs.seat === 'shaft' ? [{ ...footnote, source: 'abma-7' }] : []),
  ];
}

/** A split housing can't hold a ring tightly: the halves would have to gape or squeeze it oval. */
function splitVerdict({ seat, housing }: FitInputs, zones: readonly string[]): Value[] {
  if (seat !== 'housing' || housing !== 'split' || !zones.some((zone) => /^[K-Z]/i.test(zone))) return [];
  return [
    {
      kind: 'verdict',
      key: 'split',
      label: 'Split housing',
      code: 'split-and-tight',
      level: 'caution',
      source: 'common-practice',
    },
  ];
}

/** What a housing that grows more than its ring leaves of the fit at hand, and the zone that makes up for it. */
export function warmHousing(inputs: FitInputs, fit: Fit, advised: Fit | undefined): Part {
  if (inputs.seat !== 'housing') return nothing;
  const { size, material, runningRise, basis } = inputs;
  const housing = materialOf(material ?? 'aluminium-die-cast');
  const ring = materialOf('bearing-steel');
  const rise = runningRise ?? 0;
  const lost = warmLoss(size, housing.alpha, ring.alpha, rise);
  // The two growths are compared, not their difference with nothing: equal ones may differ in the last bit.
  const outgrows = isOver(growth(size, housing.alpha, rise), growth(size, ring.alpha, rise));
  const left = 'Interference left when the housing is warm in use';
  const values: Value[] = [
    {
      kind: 'quantity',
      key: 'warmInterference',
      label: basis === 'readings' ? `${left}, seat as measured` : left,
      value: fit.mean - lost,
      low: fit.least - lost,
      high: fit.most - lost,
      units: ['µm', 'thou'],
      source: housing.alphaSource,
    },
    ...(housing.light && advised && outgrows ? lightHousing(inputs, lost, advised) : []),
  ];
  return {
    values,
    steps: [step(lostWarm, { d: size, alpha_h: housing.alpha, alpha_r: ring.alpha, dT_h: rise }, lost)],
  };
}

/** The first zone, from loose to tight, that holds as much warm as the advised one does cold. */
function lightHousing({ size, ringClass }: FitInputs, lost: number, advised: Fit): Value[] {
  const keeps = tighterHousings.find((zone) => {
    const fit = ringFit('housing', size, zone, ringClass)?.fit;
    return fit !== undefined && !isUnder(fit.mean - lost, advised.mean);
  });
  const base = { kind: 'verdict', key: 'light', label: 'Light-alloy housing', source: 'abma-7' } as const;
  if (!keeps) return [{ ...base, code: 'light-housing-none', level: 'caution', data: { lost } }];
  return [
    {
      kind: 'text',
      key: 'warmZone',
      label: 'Zone that keeps as much hold when warm',
      value: keeps,
      source: 'arithmetic',
    },
    { ...base, code: 'light-housing', level: 'note', data: { zone: keeps, lost } },
  ];
}

/** How hot for the tightest pair; the low end is for the loosest. Housings are warmed empty, rings are warmed for shafts. */
export function warmToFit({ seat, size, material, sealed, room, gap }: FitInputs, fit: Fit): Part {
  const part = seat === 'housing' ? 'housing' : 'ring';
  const outer = materialOf(seat === 'housing' ? (material ?? 'aluminium-die-cast') : 'bearing-steel');
  const ceiling = seat === 'housing' ? housingCeiling(material ?? 'aluminium-die-cast') : ringCeiling(sealed ?? true);
  const at = (interference: number) => temperatureChange(size, interference, gap, outer.alpha);
  const [rise, low] = [at(fit.most), at(fit.least)];
  const source = outer.alphaSource;
  const slides = kindOfFit(fit) === 'clearance';
  const warmed = ceilingVerdict(part, room + rise, room, ceiling, sealed ?? true);
  const verdict = slides ? slidesByHand(warmed) : warmed;
  return {
    steps: rise > 0 ? [step(riseToFit, { I_max: fit.most, c: gap, alpha: outer.alpha, d: size }, rise)] : [],
    values: [
      {
        kind: 'quantity',
        key: 'warmTemperature',
        label: warmLabel(part, room + rise, ceiling, slides),
        value: room + rise,
        ...(rise > 0 && { low: room + low, high: room + rise }),
        units: degrees,
        main: !slides,
        source,
      },
      {
        kind: 'quantity',
        key: 'warmRise',
        label: 'Temperature rise',
        value: rise,
        ...(rise > 0 && { low, high: rise }),
        units: diff,
        source,
      },
      verdict,
    ],
  };
}
