import type { InputsOf } from '../../contract/field.ts';
import { step } from '../../contract/formula.ts';
import type { Caution, Result, Value } from '../../contract/result.ts';
import { guarded } from '../../contract/guarded.ts';
import type { Worked } from '../../contract/worked.ts';
import { isOver } from '../../thresholds/index.ts';
import { fields } from './fields.ts';
import * as f from './formulas.ts';
import { correction, fuelForOil, oilForFuel, partsOf, type Parts } from './mix.ts';

type Inputs = InputsOf<typeof fields>;
const large = ['L', 'gal'] as const;
const small = ['mL', 'fl oz'] as const;

const cautions: readonly Caution[] = [
  { hazard: 'fuel-fire', level: 'danger' },
  { hazard: 'wrong-fuel', level: 'notice' },
];

export const compute = guarded(fields, (i): Result => {
  const mix = i.known === 'mixed' ? corrected(i) : solved(i);
  return { ok: true, values: mix.value, working: mix.steps, cautions };
});

function solved(i: Inputs): Worked<Value[]> {
  const { value, steps } = partsFor(i);
  return { value: partsValues(value), steps };
}

function partsFor(i: Inputs): Worked<Parts> {
  if (i.known === 'fuel') {
    const fuel = i.fuel ?? 0;
    const oil = oilForFuel(fuel, i.ratio);
    return { value: { fuel, oil }, steps: [step(f.oil, { f: fuel, r: i.ratio }, oil)] };
  }
  if (i.known === 'oil') {
    const oil = i.oil ?? 0;
    const fuel = fuelForOil(oil, i.ratio);
    return { value: { fuel, oil }, steps: [step(f.fuel, { o: oil, r: i.ratio }, fuel)] };
  }
  return inCan(i.can ?? 0, i.ratio);
}

function inCan(volume: number, ratio: number): Worked<Parts> {
  const value = partsOf(volume, ratio);
  return {
    value,
    steps: [step(f.canFuel, { V: volume, r: ratio }, value.fuel), step(f.canOil, { V: volume, r: ratio }, value.oil)],
  };
}

function partsValues({ fuel, oil }: Parts): Value[] {
  return [
    { kind: 'quantity', key: 'oil', label: 'Oil', value: oil, units: small, decimals: [0, 1], main: true },
    { kind: 'quantity', key: 'fuel', label: 'Gasoline', value: fuel, units: large, decimals: [2, 2], main: true },
    { kind: 'quantity', key: 'total', label: 'Mix', value: fuel + oil, units: large, decimals: [2, 2] },
  ];
}

function corrected(i: Inputs): Worked<Value[]> {
  const can = inCan(i.can ?? 0, i.mixedAt ?? 1);
  const now = can.value;
  const add = correction(now, i.ratio);
  const steps = [
    ...can.steps,
    ...(add.oil > 0 ? [step(f.addOil, { f: now.fuel, r: i.ratio, o: now.oil }, add.oil)] : []),
    ...(add.fuel > 0 ? [step(f.addFuel, { o: now.oil, r: i.ratio, f: now.fuel }, add.fuel)] : []),
  ];
  return { value: correctionValues(now, add, (i.mixedAt ?? 1) / i.ratio), steps };
}

/** A jug and a can measure no nearer than this share of the oil; common practice, no source. */
const jug = 0.05;

/** @param off ratio of the can to the ratio wanted [1]; above 1 it holds too little oil */
function correctionValues(now: Parts, add: Parts, off: number): Value[] {
  const near = !isOver(Math.max(off, 1 / off), 1 + jug);
  const out = add.oil > 0 || add.fuel > 0;
  const code = !out ? 'mix-right' : near ? 'mix-near' : add.oil > 0 ? 'mix-lean' : 'mix-rich';
  return [
    {
      kind: 'verdict',
      key: 'verdict',
      label: 'Verdict',
      code,
      level: code === 'mix-lean' ? 'stop' : code === 'mix-rich' ? 'note' : 'good',
      main: true,
    },
    {
      kind: 'quantity',
      key: 'addOil',
      label: 'Oil to add',
      value: add.oil,
      units: small,
      decimals: [0, 1],
      main: true,
    },
    {
      kind: 'quantity',
      key: 'addFuel',
      label: 'Gasoline to add',
      value: add.fuel,
      units: large,
      decimals: [2, 2],
      main: true,
    },
    { kind: 'quantity', key: 'oilNow', label: 'Oil in the can now', value: now.oil, units: small, decimals: [0, 1] },
    {
      kind: 'quantity',
      key: 'fuelNow',
      label: 'Gasoline in the can now',
      value: now.fuel,
      units: large,
      decimals: [2, 2],
    },
  ];
}
