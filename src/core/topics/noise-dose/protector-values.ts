import { step, type WorkingStep } from '../../contract/formula.ts';
import type { Value } from '../../contract/result.ts';
import type { Day, NoiseInputs } from './day.ts';
import type { Part } from './dose-values.ts';
import { nioshAverage } from './dose.ts';
import * as f from './formulas.ts';
import {
  credited,
  dualReduction,
  fieldReduction,
  hmlReduction,
  labelReduction,
  nioshReduction,
  nioshShare,
  realUse,
  snrReduction,
} from './protectors.ts';

export interface Protector {
  /** By the rule chosen [dB]; may come out below nothing. */
  readonly reduction: number;
  /** What is counted, never below nothing [dB]. */
  readonly credited: number;
  readonly steps: readonly WorkingStep[];
}

/** What the protector worn takes off the level and what is counted of it [dB], with the working. */
export function protectorOf(i: NoiseInputs): Protector {
  const { reduction, steps } = reductionOf(i);
  return { reduction, credited: credited(reduction), steps };
}

function reductionOf(i: NoiseInputs): { reduction: number; steps: WorkingStep[] } {
  const one = (formula: (typeof f)[keyof typeof f], put: Readonly<Record<string, number>>, reduction: number) => ({
    reduction,
    steps: [step(formula, put, reduction)],
  });
  if (i.protector === 'none') return { reduction: 0, steps: [] };
  if (i.protector === 'snr') {
    const [N, d] = [i.snr ?? 0, i.cMinusA ?? 0];
    return one(f.snr, { N, d }, snrReduction(N, d) - realUse);
  }
  if (i.protector === 'hml') {
    const [H, M, B, d] = [i.high ?? 0, i.middle ?? 0, i.low ?? 0, i.cMinusA ?? 0];
    const reduction = hmlReduction(H, M, B, d) - realUse;
    return d <= 2 ? one(f.hmlLow, { M, H, d }, reduction) : one(f.hmlHigh, { M, B, d }, reduction);
  }
  const N = i.nrr ?? 0;
  switch (i.derating) {
    case 'muff':
    case 'foam':
    case 'other':
      return one(f.derated, { k: nioshShare[i.derating], N }, nioshReduction(N, i.derating));
    case 'dual':
      return one(f.dual, { N: Math.max(N, i.second ?? 0) }, dualReduction(N, i.second ?? 0));
    case 'label':
      return one(f.label, { N }, labelReduction(N));
    case 'half':
    case undefined:
      return one(f.half, { N }, fieldReduction(N));
  }
}

/** Level under the protector [dB] and its verdict: values and working. */
export function protectorPart(i: NoiseInputs, day: Day, protector: Protector): Part {
  if (i.protector === 'none') return { values: [], steps: [] };
  const under = nioshAverage(day.nioshDoseAtEar);
  const values: Value[] = [
    {
      kind: 'number',
      key: 'reduction',
      label: 'Protectors are counted for, dB',
      value: protector.credited,
      decimals: 1,
    },
    {
      kind: 'quantity',
      key: 'nioshDoseAtEar',
      label: 'NIOSH dose under the protectors',
      value: day.nioshDoseAtEar,
      units: ['%', '%'],
      decimals: [0, 0],
    },
    ...(under === undefined
      ? []
      : [
          {
            kind: 'number',
            key: 'nioshTwaAtEar',
            label: 'NIOSH average under them, dB(A)',
            value: under,
            decimals: 1,
          } as const,
        ]),
    ...(day.levelAtEar === undefined
      ? []
      : [
          {
            kind: 'number',
            key: 'lexAtEar',
            label: 'Daily level under them, EU and Great Britain, dB(A)',
            value: day.levelAtEar,
            decimals: 1,
          } as const,
        ]),
    ...(day.loudestWorn === undefined
      ? []
      : [
          {
            kind: 'number',
            key: 'atEar',
            label: 'At the ear in the loudest part, dB(A)',
            value: day.loudestWorn - protector.credited,
            decimals: 1,
          } as const,
        ]),
  ];
  return { values, steps: protector.steps };
}
