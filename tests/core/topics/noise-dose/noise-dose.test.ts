/** A day's noise: properties of a dose, every threshold from both sides, days far from the example. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allowedTime, dailyLevel, dose, levelAt, niosh, osha } from '../../../../src/core/topics/noise-dose/index.ts';
import { answersAnything } from '../../any-input.ts';
import { answerOf, codeOf, figureOf, numberOf } from '../answer.ts';

const name = 'noise-dose';
const bare = (level: number, time: string | number, more: object = {}) =>
  answerOf(name, { periods: [{ what: 'saw', level, time, worn: false }], protector: 'none', ...more });
const period = fc.record({
  level: fc.double({ min: 60, max: 130, noNaN: true }),
  time: fc.double({ min: 1, max: 7200, noNaN: true }),
});
const day = fc.array(period, { minLength: 1, maxLength: 6 });

describe('a dose', () => {
  it('of parts is the dose of the whole, in any order', () =>
    fc.assert(
      fc.property(day, period, (periods, one) => {
        const half = { ...one, time: one.time / 2 };
        for (const rule of [osha, niosh]) {
          const [a, b] = [dose([half, ...periods, half], rule), dose([...periods, one], rule)];
          expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-9 * Math.max(1, b));
        }
      }),
    ));

  it('never falls when the day gets longer or louder', () =>
    fc.assert(
      fc.property(day, period, (periods, one) => {
        for (const rule of [osha, niosh]) {
          expect(dose([...periods, one], rule)).toBeGreaterThanOrEqual(dose(periods, rule));
          expect(dose([{ ...one, level: one.level + 1 }], rule)).toBeGreaterThanOrEqual(dose([one], rule));
        }
      }),
    ));

  it('halves its time for every 5 and every 3 dB', () => {
    for (const l of [85, 91.3, 104]) {
      expect(allowedTime(l, osha) / allowedTime(l + 5, osha)).toBeCloseTo(2, 12);
      expect(allowedTime(l, niosh) / allowedTime(l + 3, niosh)).toBeCloseTo(2, 12);
    }
  });

  it('leaves out levels below 80 and none of them from the daily level', () => {
    expect(dose([{ level: 79.9, time: 3600 }], osha)).toBe(0);
    expect(dose([{ level: 80, time: 3600 }], osha)).toBeGreaterThan(0);
    expect(dailyLevel([{ level: 79.9, time: 28800 }])).toBeCloseTo(79.9, 9);
  });

  it('a constant level over 8 h averages itself', () =>
    fc.assert(
      fc.property(fc.double({ min: 80, max: 130, noNaN: true }), (level) => {
        const a = bare(level, '8 h');
        expect(Math.abs(numberOf(a, 'oshaTwa') - level)).toBeLessThan(0.01);
        // Three decibels are not quite twice the energy: up to 0.155 dB at 130.
        expect(Math.abs(numberOf(a, 'nioshTwa') - level)).toBeLessThan(0.16);
        expect(Math.abs(numberOf(a, 'lex') - level)).toBeLessThan(1e-9);
      }),
    ));

  it('the time left, once used, makes the dose whole', () =>
    fc.assert(
      fc.property(
        fc.double({ min: 86, max: 120, noNaN: true }),
        fc.double({ min: 0.01, max: 0.9, noNaN: true }),
        (level, share) => {
          const used = allowedTime(level, niosh) * share;
          const a = bare(level, `${used} s`, { next: level });
          expect(dose([{ level, time: used + figureOf(a, 'nioshLeft') }], niosh)).toBeCloseTo(1, 6);
        },
      ),
    ));
});

describe('verdicts, below, at and above', () => {
  it.each([
    [7.99, 'niosh-within'],
    [8, 'niosh-within'],
    [8.01, 'niosh-over'],
  ])('NIOSH, 85 dB(A) for %d h: %s', (h, code) => expect(codeOf(bare(85, `${h} h`), 'niosh')).toBe(code));

  it.each([
    [90, 3.99, 'osha-below'],
    [90, 4, 'osha-action'],
    [90, 4.01, 'osha-action'],
    [90, 8, 'osha-action'],
    [90, 8.01, 'osha-over'],
    [85, 7.99, 'osha-below'],
    [85, 8, 'osha-action'],
  ])('OSHA, %d dB(A) for %d h: %s', (level, h, code) => expect(codeOf(bare(level, `${h} h`), 'osha')).toBe(code));

  it.each([
    [79.99, 'eu-below'],
    [80, 'eu-lower'],
    [84.99, 'eu-lower'],
    [85, 'eu-upper'],
    [87, 'eu-upper'],
    [87.01, 'eu-over-limit'],
  ])('EU and Britain, %d dB(A) for 8 h, bare: %s', (level, code) =>
    expect(codeOf(bare(level, '8 h'), 'europe')).toBe(code),
  );

  it('protectors count for the limit of 87 and not for the action values', () => {
    const a = answerOf(name, {
      periods: [{ what: 'saw', level: 95, time: '8 h', worn: true }],
      protector: 'snr',
      snr: 27,
      cMinusA: 2,
    });
    expect(codeOf(a, 'europe')).toBe('eu-upper');
    expect(numberOf(a, 'lexAtEar')).toBeCloseTo(95 - (27 - 2 - 4), 9);
  });

  it.each([
    [69.9, 'ear-deaf'],
    [70, 'ear-good'],
    [80, 'ear-good'],
    [80.1, 'ear-short'],
    [85, 'ear-short'],
    [85.1, 'ear-loud'],
  ])('%d dB(A) at the ear: %s', (ear, code) =>
    expect(
      codeOf(
        answerOf(name, {
          periods: [{ what: 'saw', level: ear + 10, time: '5 min', worn: true }],
          protector: 'nrr',
          nrr: 17,
          derating: 'label',
        }),
        'protectors',
      ),
    ).toBe(code),
  );

  it('a label that counts for nothing is a stop and is not taken as harm', () => {
    const a = answerOf(name, { nrr: 7, derating: 'half' });
    expect(codeOf(a, 'protectors')).toBe('ear-nothing');
    const low = answerOf(name, { nrr: 10, derating: 'other' });
    expect(numberOf(low, 'reduction')).toBe(0);
    expect(numberOf(low, 'atEar')).toBe(103);
  });

  it.each([
    [115, undefined],
    [115.1, 'over-115'],
  ])('%d dB(A): %s', (level, code) => expect(codeOf(bare(level, '1 min'), 'ceiling')).toBe(code));

  it('a workshop with a compressor and no saw is not alarmed', () => {
    const a = bare(78, '6 h');
    expect([codeOf(a, 'niosh'), codeOf(a, 'osha'), codeOf(a, 'europe')]).toEqual([
      'niosh-within',
      'osha-below',
      'eu-below',
    ]);
  });
});

describe('the helper', () => {
  it('hears 6 dB less at twice the distance, and no more than the operator close by', () => {
    expect(levelAt(105, 1, 2)).toBeCloseTo(98.979, 3);
    expect(levelAt(105, 1, 0.5)).toBe(105);
    expect(levelAt(105, 1, 10)).toBe(85);
  });

  it('further off is never louder', () =>
    fc.assert(
      fc.property(
        fc.double({ min: 0.3, max: 500, noNaN: true }),
        (r) => levelAt(105, 1, r * 1.1) <= levelAt(105, 1, r),
      ),
    ));
});

answersAnything(name);
