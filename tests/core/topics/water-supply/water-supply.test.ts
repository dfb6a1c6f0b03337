/** Water of a cut: sums of parts, the flow's verdict from both sides, saws far from the example. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { passes } from '../../../../src/core/topics/water-supply/index.ts';
import { answersAnything } from '../../any-input.ts';
import { answerOf, codeOf, figureOf, has, verdictOf } from '../answer.ts';

const name = 'water-supply';
const typed = (flow: string, more: object = {}) => answerOf(name, { flowFrom: 'typed', flow, ...more });
const count = (answer: ReturnType<typeof answerOf>, key: string) => {
  const value = answer.values.find((v) => v.key === key);
  return value?.kind === 'count' ? value.value : undefined;
};

describe('the flow', () => {
  it.each([
    ['0.99 L/min', 'flow-short', 'stop'],
    ['1 L/min', 'flow-enough', 'good'],
    ['1.01 L/min', 'flow-enough', 'good'],
  ])('%s against 1 L/min of the manual: %s', (flow, code, level) => {
    const verdict = verdictOf(typed(flow, { manual: '1 L/min' }));
    expect([verdict?.code, verdict?.level]).toEqual([code, level]);
  });

  it.each([
    ['0.49 L/min', 'flow-low', 'stop'],
    ['0.5 L/min', 'flow-look', 'note'],
    ['0.51 L/min', 'flow-look', 'note'],
  ])('%s with no manual: %s, and never called enough', (flow, code, level) => {
    const verdict = verdictOf(typed(flow));
    expect([verdict?.code, verdict?.level, verdict?.source]).toEqual([code, level, 'hse-water-flow']);
  });

  it('by jug and watch, a liter in exactly two minutes is not too little', () =>
    expect(codeOf(answerOf(name, { jug: '1 L', jugFor: '120 s' }))).toBe('flow-look'));

  it('a pressure bottle is said to fade, a hose is not', () => {
    expect(has(answerOf(name, { supply: 'bottle' }), 'fading')).toBe(true);
    expect(has(answerOf(name, { supply: 'mains' }), 'fading')).toBe(false);
    expect(has(answerOf(name, { supply: 'mains' }), 'fills')).toBe(false);
  });
});

describe('sums', () => {
  const figures = fc.record({
    length: fc.double({ min: 0.1, max: 1000, noNaN: true }),
    depth: fc.double({ min: 1, max: 1000, noNaN: true }),
    width: fc.double({ min: 1, max: 20, noNaN: true }),
    lost: fc.double({ min: 0, max: 100, noNaN: true }),
    rate: fc.double({ min: 0.1, max: 100, noNaN: true }),
  });

  it('water and stone make the slurry; what is lost and what is taken up make it too', () =>
    fc.assert(
      fc.property(figures, (f) => {
        const a = typed('2 L/min', { ...f, paceFrom: 'rate' });
        const [water, stone, slurry, collect] = ['water', 'stone', 'slurry', 'collect'].map((k) => figureOf(a, k)) as [
          number,
          number,
          number,
          number,
        ];
        expect(water + stone).toBeCloseTo(slurry, 9);
        expect((collect + (water * f.lost) / 100) / slurry).toBeCloseTo(1, 9);
      }),
    ));

  it('a cut in two parts takes the water, time and stone of the whole', () =>
    fc.assert(
      fc.property(figures, (f) => {
        const of = (length: number) => typed('2 L/min', { ...f, length, paceFrom: 'rate' });
        for (const key of ['water', 'time', 'stone', 'collect', 'mass'])
          expect((2 * figureOf(of(f.length / 2), key)) / figureOf(of(f.length), key)).toBeCloseTo(1, 9);
      }),
    ));

  it('longer is never less', () =>
    fc.assert(
      fc.property(figures, (f) => {
        const [a, b] = [
          typed('1 L/min', { ...f, paceFrom: 'rate' }),
          typed('1 L/min', { ...f, length: f.length * 1.5, paceFrom: 'rate' }),
        ];
        expect(figureOf(b, 'water')).toBeGreaterThan(figureOf(a, 'water'));
        expect(count(b, 'fills') ?? 0).toBeGreaterThanOrEqual(count(a, 'fills') ?? 0);
      }),
    ));

  it('a fill that is exactly enough is one fill', () => {
    const at = (tank: string) =>
      count(typed('1 L/min', { length: '10 m', paceFrom: 'feed', feed: '1 m/min', tank }), 'fills');
    expect(['9.99 L', '10 L', '10.01 L'].map(at)).toEqual([2, 1, 1]);
  });

  it('the least water there is still wants one fill, and the most is not short of one', () => {
    const at = (more: object) => count(typed('1 L/min', { paceFrom: 'rate', ...more }), 'fills');
    expect(at({ length: 0.01, depth: 0.1, rate: 1000, tank: '100000 L' })).toBe(1);
    expect(at({ length: 10000, depth: 2000, rate: 0.001, tank: '0.001 L' })).toBe(1.2e12);
  });

  it('passes at, under and over a whole number of steps', () =>
    expect([99.9, 100, 100.1, 0.3].map((d, k) => passes(d, k === 3 ? 0.1 : 50))).toEqual([2, 2, 3, 3]));

  it('a floor saw: 60 m of joint at 1 m a minute, 8 L a minute', () => {
    const a = typed('8 L/min', {
      length: '60 m',
      depth: '50 mm',
      width: '3.2 mm',
      paceFrom: 'feed',
      feed: '1 m/min',
      supply: 'tank',
      tank: '200 L',
    });
    expect(figureOf(a, 'water')).toBeCloseTo(0.48, 12);
    expect(figureOf(a, 'stone')).toBeCloseTo(0.0096, 12);
    expect(count(a, 'fills')).toBe(3);
  });

  it('inch figures give the same: 1 in deep by 1 ft, 1 in·ft a minute, is a minute', () => {
    const a = typed('1 gal/min', { length: '1 ft', depth: '1 in', paceFrom: 'rate', rate: '1 in·ft/min' });
    expect(figureOf(a, 'time')).toBeCloseTo(60, 9);
    expect(figureOf(a, 'water')).toBeCloseTo(3.785411784e-3, 12);
  });
});

it('slurry is always to be taken up, never to be let go', () => {
  for (const supply of ['bottle', 'tank', 'mains'])
    expect(codeOf(answerOf(name, { supply }), 'disposal')).toBe('slurry-away');
});

answersAnything(name);
