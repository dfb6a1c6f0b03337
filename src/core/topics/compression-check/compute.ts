import type { InputsOf } from '../../contract/field.ts';
import { step, type WorkingStep } from '../../contract/formula.ts';
import { refuse, type Result, type Value } from '../../contract/result.ts';
import { guarded } from '../../contract/guarded.ts';
import { densityRatio, gaugeElsewhere, mixtureElsewhere, standardPressure } from './air.ts';
import { fields } from './fields.ts';
import * as f from './formulas.ts';

type Inputs = InputsOf<typeof fields>;

const gauge = ['bar', 'psi'] as const;
const percent = ['%', '%'] as const;
/** Shares of a healthy reading. Source: common-practice (10, 8 and 6 bar of a small two-stroke saw). */
export const compressionBands = { healthy: 1, serviceable: 0.8, worn: 0.6 } as const;
/** Rise with oil that points to rings, and a first pull this low against the last that does the same. Source: common-practice. */
const oilRise = 0.15;
const slowStart = 0.5;

export const compute = guarded(fields, (i): Result => {
  if (i.first !== undefined && i.first > i.reading) return refuse('first', 'first-over-last');
  const working: WorkingStep[] = [];
  const seaLevel = standardPressure(0);
  const here = i.barometer ?? standardPressure(i.height);
  if (i.barometer === undefined) working.push(step(f.air, { p_0: seaLevel, h: i.height, h_0: 288.15 / 0.0065 }, here));
  const expected = gaugeElsewhere(i.healthy, seaLevel, here);
  working.push(step(f.expected, { g_0: i.healthy, p: here, p_0: seaLevel }, expected));
  const share = i.reading / expected;
  working.push(step(f.share, { g: i.reading, g_h: expected }, share));
  const atSea = gaugeElsewhere(i.reading, here, seaLevel);
  working.push(step(f.atSea, { g: i.reading, p_0: seaLevel, p: here }, atSea));

  const code =
    share >= compressionBands.healthy * (1 - 1e-9)
      ? 'compression-healthy'
      : share >= compressionBands.serviceable * (1 - 1e-9)
        ? 'compression-serviceable'
        : share >= compressionBands.worn * (1 - 1e-9)
          ? 'compression-worn'
          : 'compression-low';
  const level = code === 'compression-healthy' ? 'good' : code === 'compression-serviceable' ? 'note' : 'caution';
  const values: Value[] = [
    { kind: 'verdict', key: 'verdict', label: 'Verdict', code, level, main: true },
    {
      kind: 'quantity',
      key: 'expected',
      label: 'Healthy reading here',
      value: expected,
      units: gauge,
      decimals: [1, 0],
      main: true,
    },
    {
      kind: 'quantity',
      key: 'share',
      label: 'Reading against that',
      value: share,
      units: percent,
      decimals: [0, 0],
      main: true,
    },
    {
      kind: 'quantity',
      key: 'atSea',
      label: 'The reading as it would be at sea level',
      value: atSea,
      units: gauge,
      decimals: [1, 0],
    },
    { kind: 'quantity', key: 'air', label: 'Air pressure here', value: here, units: ['kPa', 'psi'], decimals: [1, 1] },
    ...leakValues(i, working),
    ...heightValues(i, here / seaLevel),
  ];
  return {
    ok: true,
    values,
    working,
    cautions: [
      { hazard: 'compression-test-spark', level: 'warning' },
      { hazard: 'unexpected-start', level: 'danger' },
    ],
  };
});

function leakValues(i: Inputs, working: WorkingStep[]): Value[] {
  const values: Value[] = [];
  if (i.first !== undefined && i.reading > 0) {
    const slow = i.first / i.reading < slowStart;
    values.push({
      kind: 'verdict',
      key: 'firstVerdict',
      label: 'First pull',
      code: slow ? 'climbs-slowly' : 'jumps-up',
      level: 'note',
    });
  }
  if (i.oiled !== undefined && i.reading > 0) {
    const rise = i.oiled / i.reading - 1;
    working.push(step(f.rise, { g_o: i.oiled, g: i.reading }, rise));
    values.push({
      kind: 'quantity',
      key: 'rise',
      label: 'Rise with oil',
      value: rise,
      units: percent,
      decimals: [0, 0],
    });
    values.push({
      kind: 'verdict',
      key: 'oilVerdict',
      label: 'With oil',
      code: rise >= oilRise ? 'rings-leak' : 'not-the-rings',
      level: 'note',
    });
  }
  return values;
}

/** Rough consequences of the air itself, so that nobody buys a cylinder for a mountain. */
function heightValues(i: Inputs, pressureShare: number): Value[] {
  if (i.barometer !== undefined) return [];
  return [
    {
      kind: 'quantity',
      key: 'power',
      label: 'Power the air leaves, about',
      value: pressureShare,
      units: percent,
      decimals: [0, 0],
      source: 'keswani-engines',
    },
    {
      kind: 'quantity',
      key: 'richer',
      label: 'Mixture richer than at sea level by, carburetor left as it was',
      value: 1 / mixtureElsewhere(1, densityRatio(i.height)) - 1,
      units: percent,
      decimals: [0, 0],
      source: 'gupta-carburettor',
    },
  ];
}
