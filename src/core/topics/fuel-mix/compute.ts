import type { InputsOf } from '../../contract/field.ts';
import { step, type WorkingStep } from '../../contract/formula.ts';
import type { Caution, Result, Value } from '../../contract/result.ts';
import { guarded } from '../../contract/guarded.ts';
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
  const working: WorkingStep[] = [];
  const values = i.known === 'mixed' ? mixedValues(i, working) : partsValues(solve(i, working));
  return { ok: true, values, working, cautions };
});

function solve(i: Inputs, working: WorkingStep[]): Parts {
  if (i.known === 'fuel') {
    const fuel = i.fuel ?? 0;
    const oil = oilForFuel(fuel, i.ratio);
    working.push(step(f.oil, { f: fuel, r: i.ratio }, oil));
    return { fuel, oil };
  }
  if (i.known === 'oil') {
    const oil = i.oil ?? 0;
    const fuel = fuelForOil(oil, i.ratio);
    working.push(step(f.fuel, { o: oil, r: i.ratio }, fuel));
    return { fuel, oil };
  }
  return can(i.can ?? 0, i.ratio, working);
}

function can(volume: number, ratio: number, working: WorkingStep[]): Parts {
  const parts = partsOf(volume, ratio);
  working.push(
    step(f.canFuel, { V: volume, r: ratio }, parts.fuel),
    step(f.canOil, { V: volume, r: ratio }, parts.oil),
  );
  return parts;
}

function partsValues({ fuel, oil }: Parts): Value[] {
  return [
    { kind: 'quantity', key: 'oil', label: 'Oil', value: oil, units: small, decimals: [0, 1], main: true },
    { kind: 'quantity', key: 'fuel', label: 'Gasoline', value: fuel, units: large, decimals: [2, 2], main: true },
    { kind: 'quantity', key: 'total', label: 'Mix', value: fuel + oil, units: large, decimals: [2, 2] },
  ];
}

function mixedValues(i: Inputs, working: WorkingStep[]): Value[] {
  const now = can(i.can ?? 0, i.mixedAt ?? 1, working);
  const add = correction(now, i.ratio);
  if (add.oil > 0) working.push(step(f.addOil, { f: now.fuel, r: i.ratio, o: now.oil }, add.oil));
  if (add.fuel > 0) working.push(step(f.addFuel, { o: now.oil, r: i.ratio, f: now.fuel }, add.fuel));
  const code = add.oil > 0 ? 'mix-lean' : add.fuel > 0 ? 'mix-rich' : 'mix-right';
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
    { kind: 'quantity', key: 'oil', label: 'Oil in the can now', value: now.oil, units: small, decimals: [0, 1] },
    {
      kind: 'quantity',
      key: 'fuel',
      label: 'Gasoline in the can now',
      value: now.fuel,
      units: large,
      decimals: [2, 2],
    },
  ];
}
