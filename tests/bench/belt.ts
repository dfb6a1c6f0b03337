/** Belt sums under load: how many a second one core does. */
import {
  beltLength,
  centreForLength,
  compute,
  example,
  fields,
  pulleys,
} from '../../src/core/topics/belt-tension/index.ts';
import { readInputs } from '../../src/core/contract/read-inputs.ts';

const solves = 400_000;

/** Different drives each time, so that nothing can be remembered; the sum keeps the work from being dropped. */
function solveFromLength(): number {
  let sum = 0;
  for (let i = 0; i < solves; i += 1) {
    const p = pulleys(0.05 + (i % 97) * 1e-4, 0.1 + (i % 89) * 1e-3);
    sum += centreForLength(p, 0.75 + (i % 1013) * 1e-3) ?? NaN;
  }
  if (!Number.isFinite(sum)) throw new Error('A belt in the bench has no centre distance.');
  return solves;
}

function exactLength(): number {
  let sum = 0;
  for (let i = 0; i < solves; i += 1) sum += beltLength(pulleys(0.05, 0.1 + (i % 89) * 1e-3), 0.3 + (i % 1013) * 1e-4);
  if (!Number.isFinite(sum)) throw new Error('A belt in the bench has no length.');
  return solves;
}

function wholeDrive(): number {
  const read = readInputs(fields, { ...example, known: 'length', length: '924 mm', centre: undefined });
  if (!read.ok) throw new Error('The bench drive can’t be read.');
  const times = 20_000;
  for (let i = 0; i < times; i += 1) if (!compute(read.inputs).ok) throw new Error('The bench drive was refused.');
  return times;
}

export const benches: { name: string; run: () => number }[] = [
  { name: 'belt: centre distance from length', run: solveFromLength },
  { name: 'belt: exact length', run: exactLength },
  { name: 'belt: whole drive from length', run: wholeDrive },
];
