import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bearings,
  clearanceLimits,
  groups,
  matches,
  ringLimits,
} from '../../../../src/core/topics/bearing-size/index.ts';
import { answersAnything } from '../../any-input.ts';

describe('bearing size', () => {
  answersAnything('bearing-size', {
    designation: fc.constantFrom('6205', '61805', '6320', '9999', '6221'),
    bore: fc.double({ min: 9, max: 60, noNaN: true }),
    outside: fc.double({ min: 19, max: 140, noNaN: true }),
    width: fc.double({ min: 5, max: 35, noNaN: true }),
  });

  it('holds five series of 21 bearings, each with its own three dimensions', () => {
    expect(bearings.length).toBe(105);
    expect(new Set(bearings.map((b) => `${b.bore} ${b.outside} ${b.width}`)).size).toBe(105);
  });

  it('finds every bearing alone from readings worn or misread by 0.2 mm', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...bearings),
        fc.tuple(
          fc.double({ min: -2e-4, max: 2e-4, noNaN: true }),
          fc.double({ min: -2e-4, max: 2e-4, noNaN: true }),
          fc.double({ min: -2e-4, max: 2e-4, noNaN: true }),
        ),
        (b, [x, y, z]) => {
          const found = matches({ bore: b.bore + x, outside: b.outside + y, width: b.width + z }, 3e-4);
          expect(found.map((m) => m.bearing.designation)).toEqual([b.designation]);
        },
      ),
    );
  });

  it('within a bore, a higher series is larger and wider', () => {
    const series = (s: string) =>
      bearings.filter((b) => b.designation.length === s.length + 2 && b.designation.startsWith(s));
    for (const [thin, thick] of [
      ['618', '619'],
      ['619', '60'],
      ['60', '62'],
      ['62', '63'],
    ] as const) {
      series(thin).forEach((b, i) => {
        expect(series(thick)[i]?.outside ?? 0, b.designation).toBeGreaterThan(b.outside);
        expect(series(thick)[i]?.width ?? 0, b.designation).toBeGreaterThanOrEqual(b.width);
      });
    }
  });

  it('clearance groups follow each other upwards and grow with the bore', () => {
    for (const b of bearings) {
      const spans = groups.map((g) => clearanceLimits(b.bore, g));
      spans.slice(1).forEach((s, i) => {
        expect(s?.least ?? 0, b.designation).toBeGreaterThanOrEqual(spans[i]?.least ?? Infinity);
        expect(s?.most ?? 0, b.designation).toBeGreaterThan(spans[i]?.most ?? Infinity);
      });
    }
  });

  it('steps belong to their upper end, and what lies outside the tables is not given', () => {
    expect(ringLimits('outside', 0.15, 'Normal')?.lower).toBe(-18e-6);
    expect(ringLimits('outside', 0.1501, 'Normal')?.lower).toBe(-25e-6);
    expect(ringLimits('bore', 0.6, 'Normal')).toBeUndefined();
    expect(clearanceLimits(0.024, 'C4')?.most).toBe(36e-6);
    expect(clearanceLimits(0.025, 'C4')?.most).toBe(41e-6);
    expect(clearanceLimits(0.25, 'CN')).toBeUndefined();
  });

  it('puts the nearest first: by the largest of the three differences, then by all of them together', () => {
    const reading = fc.double({ min: 0.005, max: 0.3, noNaN: true });
    const readings = fc.record({ bore: reading, outside: reading, width: reading });
    // A bore a meter wide differs most in the bore, and alike for every bearing of one bore.
    fc.assert(
      fc.property(
        fc.oneof(
          readings,
          readings.map((r) => ({ ...r, bore: 1 })),
        ),
        (r) => {
          const far = matches(r, 10).map(({ bearing: b }) => {
            const by = [
              Math.abs(r.bore - b.bore),
              Math.abs(r.outside - b.outside),
              Math.abs(r.width - b.width),
            ] as const;
            return { most: Math.max(...by), all: by[0] + by[1] + by[2] };
          });
          expect(far).toHaveLength(bearings.length);
          far.slice(1).forEach((b, k) => {
            const a = far[k] ?? b;
            expect(b.most).toBeGreaterThanOrEqual(a.most);
            if (b.most === a.most) expect(b.all).toBeGreaterThanOrEqual(a.all - 1e-15);
          });
        },
      ),
      { numRuns: 40 },
    );
  });
});
