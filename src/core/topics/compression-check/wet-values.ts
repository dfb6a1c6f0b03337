/** The test with oil, corrected for the room the oil itself takes up. */
import type { InputsOf } from '../../contract/field.ts';
import { step, type WorkingStep } from '../../contract/formula.ts';
import type { Value } from '../../contract/result.ts';
import type { Worked } from '../../contract/worked.ts';
import { isOver, isUnder } from '../../thresholds/index.ts';
import type { fields } from './fields.ts';
import * as f from './formulas.ts';
import { chamberVolume, oilShareMost, readingWithOil, wetModel } from './wet-test.ts';

/** Two readings of one gauge on one engine differ by as much as this. Source: common-practice. */
export const gaugeRepeat = 0.05;
/** A rise must beat what oil alone can make by twice that before it points anywhere. Source: common-practice. */
export const riseWanted = 0.1;

const gauge = ['bar', 'psi'] as const;
const percent = ['%', '%'] as const;
const small = ['mL', 'mL'] as const;

interface Wet {
  readonly reading: number;
  readonly oiled: number;
  readonly swept: number;
  readonly oil: number;
  readonly air: number;
}

/** What the reading with oil says: values and verdict; none where no oil was put in. */
export function wetValues(i: InputsOf<typeof fields>, air: number): Worked<Value[]> {
  if (!i.wet || i.reading <= 0) return { value: [], steps: [] };
  const wet: Wet = { reading: i.reading, oiled: i.oiled ?? 0, swept: i.swept ?? 0, oil: i.oil ?? 0, air };
  const likely = oilAlone(wet, wetModel.trapped);
  const most = oilAlone(wet, wetModel.trappedLeast);
  const oilMost = oilShareMost * wet.swept;
  const oilMostStep = step(f.oilMost, { V_h: wet.swept, k_o: oilShareMost }, oilMost);
  const amount = amountValues(oilMost, likely.value.chamber);
  // Without room to close on there is no reading to reckon with.
  if (!Number.isFinite(most.value.reading))
    return {
      value: [verdict('oil-fills-chamber', 'stop', { room: most.value.chamber }), ...amount],
      steps: [oilMostStep, ...most.steps],
    };
  const rise = wet.oiled / wet.reading - 1;
  const beyond = wet.oiled / most.value.reading - 1;
  const [code, level] = isOver(wet.oil, oilMost)
    ? (['oil-too-much', 'caution'] as const)
    : isUnder(wet.oiled, wet.reading * (1 - gaugeRepeat))
      ? (['oil-fell', 'caution'] as const)
      : isOver(wet.oiled, most.value.reading * (1 + riseWanted))
        ? (['oil-points-to-rings', 'note'] as const)
        : (['oil-cannot-tell', 'note'] as const);
  return {
    value: [
      verdict(code, level, { alone: most.value.reading / wet.reading - 1, most: oilMost }),
      { kind: 'quantity', key: 'rise', label: 'Rise with oil', value: rise, units: percent, decimals: [0, 0] },
      {
        kind: 'quantity',
        key: 'oilAlone',
        label: 'What the gauge would read if the oil sealed nothing and only took up room',
        value: likely.value.reading,
        low: wet.reading,
        high: most.value.reading,
        units: gauge,
        decimals: [1, 0],
        source: 'wet-test-model',
        note: 'The least if it all ran out through the ports, the most if it all lies on the piston.',
      },
      {
        kind: 'quantity',
        key: 'beyond',
        label: 'Rise beyond the most that oil can make by itself',
        value: beyond,
        units: percent,
        decimals: [0, 0],
      },
      ...amount,
    ],
    steps: [
      oilMostStep,
      ...likely.steps,
      ...most.steps,
      step(f.rise, { g_o: wet.oiled, g: wet.reading }, rise),
      step(f.beyond, { g_o: wet.oiled, g_w: most.value.reading }, beyond),
    ],
  };
}

function verdict(code: string, level: 'note' | 'caution' | 'stop', data: Readonly<Record<string, number>>): Value {
  // A stop stands first, beside the verdict on the dry reading.
  return { kind: 'verdict', key: 'oilVerdict', label: 'With oil', code, level, main: level === 'stop', data };
}

/** What the oil alone would make of the dry reading, for a share of the stroke behind the closed port. */
function oilAlone(w: Wet, trapped: number): Worked<{ readonly chamber: number; readonly reading: number }> {
  const chamber = chamberVolume(w.swept, trapped, w.reading, w.air);
  const reading = readingWithOil(w.swept, trapped, chamber, w.oil, w.air);
  const found: WorkingStep = step(
    f.chamber,
    { k_t: trapped, V_h: w.swept, g: w.reading, p: w.air, n_p: wetModel.exponent },
    chamber,
  );
  const put = { p: w.air, k_t: trapped, V_h: w.swept, V_c: chamber, V_o: w.oil, n_p: wetModel.exponent };
  return {
    value: { chamber, reading },
    steps: Number.isFinite(reading) ? [found, step(f.withOil, put, reading)] : [found],
  };
}

function amountValues(oilMost: number, chamber: number): Value[] {
  return [
    {
      kind: 'quantity',
      key: 'oilMost',
      label: 'Oil this test bears, at most',
      value: oilMost,
      units: small,
      decimals: [2, 2],
      note: 'A drop is about 0.05 mL.',
    },
    {
      kind: 'quantity',
      key: 'chamber',
      label: 'Combustion chamber, from the dry reading',
      value: chamber,
      units: ['cm3', 'cm3'],
      decimals: [1, 1],
      source: 'wet-test-model',
    },
  ];
}
