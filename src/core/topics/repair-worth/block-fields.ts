/** Inputs the building blocks share. */
import type { BlockOutcome } from '../../contract/block.ts';

export const rate = {
  key: 'rate',
  label: 'Interest in a period',
  kind: 'quantity',
  dimension: 'ratio',
  units: ['%', '%'],
  min: -50,
  max: 1000,
} as const;
export const years = { key: 'years', label: 'Periods', kind: 'number', min: 0, above: true, max: 1000 } as const;

export const money = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'money', min: -1e12, max: 1e12 }) as const;
export const moneyOr0 = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'money', default: 0, min: -1e12, max: 1e12 }) as const;
export const chance = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'quantity', dimension: 'ratio', units: ['%', '%'], min: 0, max: 100 }) as const;
export const positive = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'number', min: 0, above: true, max: 1e12 }) as const;
export const count0 = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'number', min: 0, max: 1e12 }) as const;

export const problem = (
  field: string,
  code: string,
  data: Readonly<Record<string, number | string>> = {},
): BlockOutcome<never> => ({ problem: { field, code, data } });
