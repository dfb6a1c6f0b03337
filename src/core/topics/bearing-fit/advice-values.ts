import { step, type WorkingStep } from '../../contract/formula.ts';
import type { Fit } from '../limits-fits/index.ts';
import type { Value } from '../../contract/result.ts';
import { materialOf, warmLoss } from '../../materials/index.ts';
import type { FitInputs } from './fields.ts';
import { lostWarm } from './formulas.ts';
import { recommend, tighterHousings, type Advice } from './recommend.ts';
import { ringFit } from './ring-fit.ts';

interface Advised {
  readonly zone: string;
  readonly fit: Fit | undefined;
  readonly values: readonly Value[];
}

/** What the table recommends, why, and what a housing that grows more than its ring does to it. */
export function adviceValues(inputs: FitInputs, working: WorkingStep[]): Advised {
  const { seat, size, ringClass, turning, load, slides } = inputs;
  const advice = recommend({ seat, size, turning, load, slides, housing: inputs.housing ?? 'solid' });
  const fit = ringFit(seat, size, advice.zone, ringClass)?.fit;
  const values: Value[] = [
    {
      kind: 'text',
      key: 'advisedZone',
      label: 'Zone the table recommends',
      value: advice.zone,
      source: advice.source,
      main: true,
    },
    { kind: 'verdict', key: 'reason', label: 'Why', code: advice.reason, level: 'note', source: advice.source },
    ...splitVerdict(inputs, advice),
    ...(seat === 'housing'
      ? warmHousing(inputs, fit, working)
      : [
          {
            kind: 'verdict',
            key: 'footnote',
            label: 'Shaft',
            code: 'solid-steel-only',
            level: 'note',
            source: 'abma-7',
          } as const,
        ]),
  ];
  return { zone: advice.zone, fit, values };
}

/** A split housing can't hold a ring tightly: the halves would have to gape or squeeze it oval. */
function splitVerdict({ seat, housing }: FitInputs, { zone }: Advice): Value[] {
  if (seat !== 'housing' || housing !== 'split' || !/^[KMNP]/.test(zone)) return [];
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

function warmHousing(
  { size, material, ringClass, runningRise, zone }: FitInputs,
  advised: Fit | undefined,
  working: WorkingStep[],
): Value[] {
  const housing = materialOf(material ?? 'aluminium-die-cast');
  const ring = materialOf('bearing-steel');
  const rise = runningRise ?? 0;
  const lost = warmLoss(size, housing.alpha, ring.alpha, rise);
  working.push(step(lostWarm, { d: size, alpha_h: housing.alpha, alpha_r: ring.alpha, dT_h: rise }, lost));
  const chosen = ringFit('housing', size, zone, ringClass)?.fit;
  const hot: Value[] = chosen
    ? [
        {
          kind: 'quantity',
          key: 'warmInterference',
          label: 'Interference left when the housing is warm in use',
          value: chosen.mean - lost,
          low: chosen.least - lost,
          high: chosen.most - lost,
          units: ['µm', 'thou'],
          source: housing.alphaSource,
        },
      ]
    : [];
  if (!housing.light || !advised || lost <= 0) return hot;
  const keeps = tighterHousings.find(
    (z) => (ringFit('housing', size, z, ringClass)?.fit.mean ?? -1) - lost >= advised.mean,
  );
  const base = {
    kind: 'verdict',
    key: 'light',
    label: 'Light-alloy housing',
    level: 'note',
    source: 'abma-7',
  } as const;
  return [
    ...hot,
    ...(keeps
      ? [
          {
            kind: 'text',
            key: 'warmZone',
            label: 'Zone that keeps as much hold when warm',
            value: keeps,
            source: 'arithmetic',
          } as const,
        ]
      : []),
    keeps
      ? { ...base, code: 'light-housing', data: { zone: keeps, lost } }
      : { ...base, code: 'light-housing-none', level: 'caution', data: { lost } },
  ];
}
