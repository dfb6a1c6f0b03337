import type { InputsOf } from '../../contract/field.ts';
import { step } from '../../contract/formula.ts';
import { refuse, type Caution, type Result, type Value } from '../../contract/result.ts';
import { guarded } from '../../contract/guarded.ts';
import type { Worked } from '../../contract/worked.ts';
import { isOver, isUnder } from '../../thresholds/index.ts';
import { gaugeElsewhere, lapseHeight, mixtureElsewhere, standardPressure } from './air.ts';
import { fields } from './fields.ts';
import * as f from './formulas.ts';
import { leakValues } from './leak-values.ts';
import { ringValues } from './ring-values.ts';
import { wetValues } from './wet-values.ts';

export type Inputs = InputsOf<typeof fields>;

const gauge = ['bar', 'psi'] as const;
const percent = ['%', '%'] as const;
/** Shares of a healthy reading. Source: common-practice (10, 8 and 6 bar of a small two-stroke saw). */
export const compressionBands = { healthy: 1, serviceable: 0.8, worn: 0.6 } as const;
/** More than wear and good luck explain: a good saw reads some 12 bar where 10 is healthy. Our choice. */
export const tooHigh = 1.4;
/** A first pull under this share of the highest reading climbs slowly. Source: common-practice. */
export const slowStart = 0.5;

export const compute = guarded(fields, (i): Result => {
  if (i.first !== undefined && i.first > i.reading) return refuse('first', 'first-over-last');
  if (i.leak && isOver(i.lost ?? 0, i.pumped ?? 0)) return refuse('lost', 'lost-over-pumped');
  const air = airHere(i);
  const judged = judge(i, air.value);
  const wet = wetValues(i, air.value);
  const [leak, ring] = [leakValues(i, air.value), ringValues(i)];
  const cautions: Caution[] = [
    { hazard: 'unexpected-start', level: 'danger' },
    { hazard: 'compression-test-spark', level: 'warning' },
  ];
  return {
    ok: true,
    values: [
      ...wet.value.filter(isStop),
      ...judged.value,
      ...wet.value.filter((v) => !isStop(v)),
      ...leak.value,
      ...ring.value,
      ...heightValues(air.value),
    ],
    working: [...air.steps, ...judged.steps, ...wet.steps, ...leak.steps, ...ring.steps],
    cautions: wet.value.some(isStop) ? [{ hazard: 'oil-lock', level: 'warning' }, ...cautions] : cautions,
  };
});

const isStop = (v: Value) => v.kind === 'verdict' && v.level === 'stop';

/** Pressure of the air here [Pa]: the barometer where one was read, else the standard atmosphere at the height. */
function airHere(i: Inputs): Worked<number> {
  if (i.barometer !== undefined) return { value: i.barometer, steps: [] };
  const value = standardPressure(i.height);
  return { value, steps: [step(f.air, { p_0: standardPressure(0), h: i.height, h_0: lapseHeight }, value)] };
}

function judge(i: Inputs, air: number): Worked<Value[]> {
  const seaLevel = standardPressure(0);
  const expected = gaugeElsewhere(i.healthy, seaLevel, air);
  const share = i.reading / expected;
  const atSea = gaugeElsewhere(i.reading, air, seaLevel);
  const code = bandOf(share);
  return {
    steps: [
      step(f.expected, { g_0: i.healthy, p: air, p_0: seaLevel }, expected),
      step(f.share, { g: i.reading, g_h: expected }, share),
      step(f.atSea, { g: i.reading, p_0: seaLevel, p: air }, atSea),
    ],
    value: [
      {
        kind: 'verdict',
        key: 'verdict',
        label: 'Verdict',
        code,
        level: code === 'compression-healthy' ? 'good' : code === 'compression-serviceable' ? 'note' : 'caution',
        main: true,
      },
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
      { kind: 'quantity', key: 'air', label: 'Air pressure here', value: air, units: ['kPa', 'psi'], decimals: [1, 1] },
      ...firstPull(i, !isUnder(share, compressionBands.healthy)),
    ],
  };
}

function bandOf(share: number) {
  if (isOver(share, tooHigh)) return 'compression-high';
  if (!isUnder(share, compressionBands.healthy)) return 'compression-healthy';
  if (!isUnder(share, compressionBands.serviceable)) return 'compression-serviceable';
  return isUnder(share, compressionBands.worn) ? 'compression-low' : 'compression-worn';
}

/** How the needle climbed. A quick climb to a good reading says the engine is sound; to a low one, that the leak never stops. */
function firstPull(i: Inputs, healthy: boolean): Value[] {
  if (i.first === undefined || i.reading <= 0) return [];
  const slow = isUnder(i.first, slowStart * i.reading);
  return [
    {
      kind: 'verdict',
      key: 'firstVerdict',
      label: 'First pull',
      code: slow ? (healthy ? 'climbs-slowly-to-good' : 'climbs-slowly') : healthy ? 'jumps-up-to-good' : 'jumps-up',
      level: 'note',
    },
  ];
}

/** Rough consequences of thin air, so that nobody buys a cylinder for a mountain. One air for both: as warm as where it was set. */
function heightValues(air: number): Value[] {
  const thin = air / standardPressure(0);
  return [
    {
      kind: 'quantity',
      key: 'power',
      label: 'Power the air leaves, about, as warm a day as at sea level',
      value: thin,
      units: percent,
      decimals: [0, 0],
      source: 'keswani-engines',
    },
    {
      kind: 'quantity',
      key: 'richer',
      label: 'Mixture richer than at sea level by, in the same air, carburetor left as it was',
      value: 1 / mixtureElsewhere(1, thin) - 1,
      units: percent,
      decimals: [0, 0],
      source: 'gupta-carburettor',
    },
  ];
}
