/** A day's vibration: properties, the two values from both sides, days far from the example. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { daily, points, timeLeft } from '../../../../src/core/topics/hand-arm-vibration/index.ts';
import { valueOf } from '../../../../src/core/contract/result.ts';
import { answersAnything } from '../../any-input.ts';
import { answerOf, codeOf, figureOf, numberOf } from '../answer.ts';

const name = 'hand-arm-vibration';
const use = fc.record({
  value: fc.double({ min: 0.5, max: 30, noNaN: true }),
  time: fc.double({ min: 1, max: 7200, noNaN: true }),
});
const day = fc.array(use, { minLength: 1, maxLength: 6 });
const one = (value: number, time: string | number, more: object = {}) =>
  answerOf(name, { tools: [{ what: 'saw', value, from: 'measured', time, ...more }] });

describe('a day', () => {
  it('of parts is the day of the whole, and points add up to 16 A(8)²', () =>
    fc.assert(
      fc.property(day, use, (uses, more) => {
        const half = { ...more, time: more.time / 2 };
        const [a, b] = [daily([half, ...uses, half]), daily([...uses, more])];
        expect(a / b).toBeCloseTo(1, 9);
        expect(uses.reduce((sum, u) => sum + points(u), 0) / (16 * daily(uses) ** 2)).toBeCloseTo(1, 9);
      }),
    ));

  it('is never better for more time or more shaking', () =>
    fc.assert(
      fc.property(day, use, (uses, more) => {
        expect(daily([...uses, more])).toBeGreaterThanOrEqual(daily(uses));
        expect(points({ ...more, value: more.value * 2 }) / points(more)).toBeCloseTo(4, 9);
      }),
    ));

  it('the time left, once used, makes the points whole', () =>
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 390, noNaN: true }),
        fc.double({ min: 5, max: 30, noNaN: true }),
        (done, value) => {
          const left = timeLeft(done, value, 400);
          expect(done + points({ value, time: left })).toBeCloseTo(400, 6);
        },
      ),
    ));

  it('nothing is left once over, not less than nothing', () => expect(timeLeft(401, 5, 400)).toBe(0));
});

describe('the two values', () => {
  it.each([
    [2.499, 'below-action'],
    [2.5, 'at-action'],
    [2.501, 'at-action'],
    [5, 'at-action'],
    [5.001, 'over-limit'],
  ])('%d m/s² for 8 h: %s', (value, code) => expect(codeOf(one(value, '8 h'))).toBe(code));

  it('five parts that make exactly the limit are not over it', () => {
    const tools = Array.from({ length: 5 }, () => ({ what: 'saw', value: 10, from: 'measured', time: 24 }));
    expect(codeOf(answerOf(name, { tools }))).toBe('at-action');
  });

  it('a breaker of 15 m/s² is over the limit in an hour; a floor saw of 3 is not in a day', () => {
    expect(codeOf(one(15, '54 min'))).toBe('over-limit');
    expect(codeOf(one(3, '5 h'))).toBe('below-action');
  });
});

describe('a value from the manual', () => {
  it('counts with its K, with 40 % where there is none, or doubled, and never with both', () => {
    const at = (more: object, allow = 'uncertainty') =>
      figureOf(
        answerOf(name, { tools: [{ what: 'saw', value: 5, from: 'declared', time: '8 h', ...more }], allow }),
        'day',
      );
    expect(at({ uncertainty: 1.5 })).toBeCloseTo(6.5, 9);
    expect(at({})).toBeCloseTo(7, 9);
    expect(at({ uncertainty: 1.5 }, 'double')).toBeCloseTo(10, 9);
  });

  it('shows the figure as it stands as the low end', () => {
    const a = answerOf(name, { tools: [{ what: 'saw', value: 5, from: 'declared', uncertainty: 2, time: '8 h' }] });
    const shown = valueOf(a, 'day', 'quantity');
    expect([shown.low, shown.high].map((v) => Number(v?.toFixed(9)))).toEqual([5, 7]);
  });

  it('a measured value stands as it is', () => expect(numberOf(one(5, '3 h'), 'points')).toBeCloseTo(150, 9));
});

answersAnything(name);
