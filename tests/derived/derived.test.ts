/** The figures of derived cases worked out again in again/, without the core. */
import { describe, expect, it } from 'vitest';
import { topics } from '../../src/core/registry.ts';
import type { Case } from '../cases/case.ts';
import { caseFile } from '../cases/files.ts';
import { allowedDifference } from '../cases/run.ts';
import { sums as bearings } from './again/bearings.ts';
import { sums as drive } from './again/drive.ts';
import { sums as engine } from './again/engine.ts';
import { outIn, readAll } from './again/inputs.ts';
import { sums as shop } from './again/shop.ts';

const sums = { ...bearings, ...drive, ...engine, ...shop };
const cases = Object.keys(topics).flatMap((topic) => caseFile('derived', topic)?.cases ?? []);

/** Topics and calls without a sum here, and where their figures are done again. Nothing is left out in silence. */
const byPython = 'safety-sums.py beside this file, run by hand';
const elsewhere: Readonly<Record<string, string>> = {
  ...{ 'dust-control': byPython, 'water-supply': byPython, 'noise-dose': byPython },
  ...{ 'hand-arm-vibration': byPython, 'fume-room': byPython },
  'limits-fits/limits': 'a zone of two tables is no sum: the rules between the tables in tests/core/topics/limits-fits',
};
const isElsewhere = (call: string) => call in elsewhere || (call.split('/')[0] ?? '') in elsewhere;

/** Keys of a case that a sum here gives too. */
function shared(one: Case, got: Readonly<Record<string, number | string | undefined>>): string[] {
  return Object.keys(one.expected ?? {}).filter((key) => got[key] !== undefined && !Number.isNaN(got[key]));
}

describe.each(Object.keys(sums))('%s', (call) => {
  const mine = cases.filter((c) => c.call === call && c.expected !== undefined);
  it('has a case that it works out again', () => {
    expect(mine.some((c) => shared(c, sums[call]?.(readAll(c.inputs)) ?? {}).length > 0)).toBe(true);
  });
  it.each(mine.map((c) => [c.id, c] as const))('%s', (_, one) => {
    const got = sums[call]?.(readAll(one.inputs)) ?? {};
    for (const key of shared(one, got)) {
      const wanted = one.expected?.[key];
      if (wanted === undefined) continue;
      if (typeof wanted.value === 'string') expect(got[key]).toBe(wanted.value);
      else
        expect(
          Math.abs(Number(got[key]) * outIn(wanted.unit) - wanted.value),
          `${key}: ${got[key]} for ${wanted.value}`,
        ).toBeLessThanOrEqual(allowedDifference({ ...wanted, value: wanted.value }));
    }
  });
});

it('works out again no fewer figures than it did', () => {
  const figures = cases.flatMap((c) => {
    const got = sums[c.call]?.(readAll(c.inputs)) ?? {};
    return shared(c, got).filter((key) => typeof got[key] === 'number');
  });
  expect(figures.length).toBeGreaterThanOrEqual(483);
});

it('every call with derived cases is worked out again here, or it is said where', () => {
  const calls = new Set(cases.filter((c) => c.expected !== undefined).map((c) => c.call));
  expect([...calls].filter((call) => !(call in sums) && !isElsewhere(call))).toEqual([]);
  expect([...calls].filter((call) => call in sums && isElsewhere(call))).toEqual([]);
});
