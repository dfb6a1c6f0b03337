import { step } from '../../contract/formula.ts';
import type { Value } from '../../contract/result.ts';
import type { Day, NoiseInputs } from './day.ts';
import { distanceFor, levelAt } from './distance.ts';
import type { Part } from './dose-values.ts';
import { allowedTime, niosh } from './dose.ts';
import * as f from './formulas.ts';

/** The loudest part of the day, as it reaches the helper. */
export function helperPart(i: NoiseInputs, day: Day): Part {
  const level = levelAt(day.loudest, i.readAt, i.away);
  const time = allowedTime(level, niosh);
  const values: Value[] = [
    {
      kind: 'number',
      key: 'helperLevel',
      label: 'At the helper outdoors, about, dB(A)',
      value: level,
      decimals: 0,
      source: 'inverse-square',
    },
    ...(time < 86400
      ? [
          {
            kind: 'quantity',
            key: 'helperTime',
            label: 'Helper without protectors, by NIOSH, at most',
            value: time,
            units: ['min', 'min'],
            decimals: [0, 0],
          } as const,
        ]
      : []),
    {
      kind: 'quantity',
      key: 'helperDistance',
      label: 'Below 85 dB(A) outdoors, from about',
      value: distanceFor(day.loudest, i.readAt, 85),
      units: ['m', 'ft'],
      decimals: [0, 0],
      source: 'inverse-square',
    },
  ];
  return {
    values,
    steps: i.away > i.readAt ? [step(f.off, { L: day.loudest, r: i.away, r_0: i.readAt }, level)] : [],
  };
}
