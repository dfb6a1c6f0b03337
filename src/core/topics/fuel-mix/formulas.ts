import type { Formula, SymbolSpec } from '../../contract/formula.ts';

const o = { name: 'oil', unit: 'mL' } as const;
const f = { name: 'gasoline', unit: 'L' } as const;
const r = { name: 'parts of gasoline to 1 of oil', unit: '1' } as const;
const V = { name: 'mix', unit: 'L' } as const;

function formula(id: string, what: string, expression: string, symbols: Readonly<Record<string, SymbolSpec>>): Formula {
  return { id: `fuel-mix/${id}`, what, expression, symbols, source: 'fuel-mix-arithmetic' };
}

export const oil = formula('oil', 'Oil for the gasoline', 'o = f / r', { o, f, r });
export const fuel = formula('fuel', 'Gasoline for the oil', 'f = o * r', { f, o, r });
export const canFuel = formula('can-fuel', 'Gasoline in the can', 'f = V * r / (r + 1)', { f, V, r });
export const canOil = formula('can-oil', 'Oil in the can', 'o = V / (r + 1)', { o, V, r });
export const addOil = formula('add-oil', 'Oil to add', 'o_a = f / r - o', {
  o_a: { name: 'oil to add', unit: 'mL' },
  f,
  r,
  o,
});
export const addFuel = formula('add-fuel', 'Gasoline to add', 'f_a = o * r - f', {
  f_a: { name: 'gasoline to add', unit: 'L' },
  o,
  r,
  f,
});
