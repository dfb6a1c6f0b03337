/** Averages of a day: properties that hold whatever the figures, and the ends of what may be typed. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  dayAverage,
  eightHours,
  filterSeries,
  leastRespirator,
  longShiftFactor,
  respirators,
  timeToLimit,
  worstEightHours,
} from '../../../src/core/exposure/index.ts';

const spell = fc.record({
  concentration: fc.double({ min: 0, max: 10, noNaN: true }),
  time: fc.double({ min: 0, max: 4 * 3600, noNaN: true }),
});
const day = fc.array(spell, { minLength: 1, maxLength: 6 });

describe('averages', () => {
  it('longer is never better', () =>
    fc.assert(
      fc.property(day, spell, (spells, more) => {
        expect(dayAverage([...spells, more])).toBeGreaterThanOrEqual(dayAverage(spells));
        expect(worstEightHours([...spells, more])).toBeGreaterThanOrEqual(worstEightHours(spells) - 1e-9);
      }),
    ));

  it('a spell in two parts is the same spell, in any order', () =>
    fc.assert(
      fc.property(day, spell, (spells, one) => {
        const half = { ...one, time: one.time / 2 };
        expect(dayAverage([half, ...spells, half])).toBeCloseTo(dayAverage([...spells, one]), 9);
        expect(worstEightHours([half, ...spells, half])).toBeCloseTo(worstEightHours([...spells, one]), 9);
      }),
    ));

  it('the worst eight hours never count more than the whole day over eight, nor more than the dustiest spell', () =>
    fc.assert(
      fc.property(day, (spells) => {
        const worst = worstEightHours(spells);
        expect(worst).toBeLessThanOrEqual(dayAverage(spells) + 1e-9);
        expect(worst).toBeLessThanOrEqual(Math.max(...spells.map((s) => s.concentration)) + 1e-9);
      }),
    ));

  it('after the time to the limit the average stands at the limit', () =>
    fc.assert(
      fc.property(
        fc.double({ min: 1.01, max: 100, noNaN: true }),
        fc.double({ min: 0, max: 0.99, noNaN: true }),
        (c, b) => {
          const t = timeToLimit(c, 1, b);
          const average = dayAverage([
            { concentration: c, time: t },
            { concentration: b, time: eightHours - t },
          ]);
          expect(average).toBeCloseTo(1, 9);
        },
      ),
    ));

  it('what never passes the limit has no time to it, what is past it has none left', () => {
    expect(timeToLimit(0.05, 0.05)).toBe(Infinity);
    expect(timeToLimit(0.06, 0.05, 0.05)).toBe(0);
  });

  it('a longer shift never has a higher limit', () => {
    const hours = [8, 8.01, 9, 10, 12, 16, 24].map((h) => longShiftFactor(h * 3600));
    expect(hours[0]).toBe(1);
    expect([...hours].sort((a, b) => b - a)).toEqual(hours);
    expect(hours.at(-1)).toBe(0);
  });
});

describe('factors as printed', () => {
  // 29 CFR 1910.134 Table 1 in a US Army sheet, air-purifying and powered air; full mask with powered air from the same.
  it('USA', () => expect(respirators.us.map((r) => r.factor)).toEqual([10, 25, 50, 1000]));
  // HSG53 and BS EN 529 at second hand: FFP1, FFP2, FFP3; full mask with P3 from memory.
  it('Great Britain', () => expect(respirators.gb.map((r) => r.factor)).toEqual([4, 10, 20, 40]));
});

describe('masks and filters, below, at and above', () => {
  it.each([
    [0.5, 10],
    [9.999, 10],
    [10, 10],
    [10.001, 25],
    [25, 25],
    [25.01, 50],
    [50.01, 1000],
  ])('US, %d times the limit: %d', (ratio, factor) => expect(leastRespirator('us', ratio)?.factor).toBe(factor));

  it.each([
    [4, 4],
    [4.01, 10],
    [10.01, 20],
    [20, 20],
    [20.01, 40],
  ])('Great Britain, %d times the limit: %d', (ratio, factor) =>
    expect(leastRespirator('gb', ratio)?.factor).toBe(factor),
  );

  it('past the end of a scale there is none', () => {
    expect(leastRespirator('us', 1000.1)).toBeUndefined();
    expect(leastRespirator('gb', 40.1)).toBeUndefined();
  });

  it('an N filter is never for oil, an R filter for eight hours of it', () => {
    expect(filterSeries(false, 100 * 3600)).toEqual(['N', 'R', 'P']);
    expect(filterSeries(true, 8 * 3600)).toEqual(['R', 'P']);
    expect(filterSeries(true, 8.01 * 3600)).toEqual(['P']);
  });
});
