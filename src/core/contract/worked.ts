import type { WorkingStep } from './formula.ts';

/** What one part of a calculator gives: its outcome and the lines of working behind it, in order. `compute` lays them out. */
export interface Worked<T> {
  readonly value: T;
  readonly steps: readonly WorkingStep[];
}
