/** The derived cases whose sum stands in scripts.ts, done again without the core. */
import { describe, expect, it } from 'vitest';
import { topics } from '../../src/core/registry.ts';
import type { Case } from '../cases/case.ts';
import { caseFile } from '../cases/files.ts';
import { allowedDifference } from '../cases/run.ts';
import { metric, outIn, sums } from './scripts.ts';

const cases = Object.keys(topics).flatMap((topic) => caseFile('derived', topic)?.cases ?? []);

/** A case the small reader of scripts.ts can read, in and out. */
function isPlain(one: Case): boolean {
  const expected = Object.values(one.expected ?? {});
  return (
    Object.values(one.inputs).every((v) => metric(v) !== undefined) &&
    expected.some((e) => typeof e.value === 'number' && outIn(e.unit) !== undefined)
  );
}

describe.each(Object.keys(sums))('%s', (call) => {
  const mine = cases.filter((c) => c.call === call && isPlain(c));
  it('has cases', () => expect(mine.length).toBeGreaterThan(0));
  it.each(mine.map((c) => [c.id, c] as const))('%s', (_, one) => {
    const figures = Object.fromEntries(Object.entries(one.inputs).map(([key, v]) => [key, metric(v) ?? NaN]));
    const got = sums[call]?.(figures) ?? {};
    const both = Object.keys(got).filter((key) => one.expected?.[key] !== undefined);
    expect(both.length).toBeGreaterThan(0);
    for (const key of both) {
      const wanted = one.expected?.[key];
      if (typeof wanted?.value !== 'number') continue;
      const difference = Math.abs((got[key] ?? NaN) * (outIn(wanted.unit) ?? NaN) - wanted.value);
      expect(difference, `${key}: ${got[key]} for ${wanted.value}`).toBeLessThanOrEqual(
        allowedDifference({ ...wanted, value: wanted.value }),
      );
    }
  });
});
