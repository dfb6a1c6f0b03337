/** What the dust sum may never say, its thresholds from both sides, and days far from the example. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  controlTable,
  factorAsked,
  tasks,
  type Control,
  type Place,
} from '../../../../src/core/topics/dust-control/index.ts';
import { answersAnything } from '../../any-input.ts';
import { answerOf, codeOf, figureOf, has, numberOf, verdictOf } from '../answer.ts';

const name = 'dust-control';
const row = (more: object) => ({
  task: 'hand-held-saw',
  control: 'water',
  place: 'outdoors',
  power: 'other',
  time: 1,
  ...more,
});
const byTask = (rule: string, work: object[], more: object = {}) =>
  answerOf(name, { rule, way: 'table', work: work as never, ...more });
const measured = (mg: number, more: object = {}) =>
  answerOf(name, {
    rule: 'us-construction',
    way: 'measured',
    spells: [{ what: 'cutting', concentration: mg, time: 8 }],
    shift: 8,
    ...more,
  });
const places = ['us-construction', 'us-general', 'gb', 'eu', 'es', 'fr', 'de', 'ca-on', 'ca-qc', 'au', 'nz', 'za'];

describe('dry cutting', () => {
  const anyWork = fc.record({
    task: fc.constantFrom(...tasks),
    control: fc.constantFrom<Control>('water', 'extraction', 'none'),
    place: fc.constantFrom<Place>('outdoors', 'enclosed'),
    power: fc.constantFrom('engine', 'other'),
    time: fc.double({ min: 0.1, max: 3, noNaN: true }),
  });

  it('is a stop wherever it is done, whatever the rules and the other tasks', () =>
    fc.assert(
      fc.property(
        fc.constantFrom(...places),
        fc.array(anyWork, { maxLength: 4 }),
        anyWork,
        fc.boolean(),
        (rule, work, one, regular) => {
          const answer = byTask(rule, [...work, { ...one, control: 'none' }], { regular });
          expect(verdictOf(answer)?.level).toBe('stop');
          expect(has(answer, 'factor')).toBe(false);
        },
      ),
    ));

  it('indoors is refused in its own words', () => {
    for (const rule of places)
      expect(codeOf(byTask(rule, [row({ control: 'none', place: 'enclosed' })])), rule).toBe('dry-inside');
  });

  it('with a vacuum and no water on the blade is refused indoors, whatever the rules', () => {
    for (const task of ['stationary-saw', 'hand-held-saw', 'fiber-cement-saw', 'walk-behind-saw', 'ride-on-saw'])
      for (const rule of places)
        for (const regular of [true, false]) {
          const answer = byTask(rule, [row({ task, control: 'extraction', place: 'enclosed' })], { regular });
          expect(codeOf(answer), `${task}, ${rule}`).toBe('dry-inside');
          expect(has(answer, 'factor')).toBe(false);
        }
  });

  it('with a vacuum outdoors is what the rules of the place make of it, and never better than wet', () => {
    const codes = { 'us-construction': 'wrong-control', 'us-general': 'dry', gb: 'britain-extraction', es: 'dry' };
    for (const [rule, code] of Object.entries(codes))
      expect(codeOf(byTask(rule, [row({ control: 'extraction' })])), rule).toBe(code);
    expect(codeOf(byTask('us-construction', [row({ task: 'fiber-cement-saw', control: 'extraction' })]))).toBe(
      'table-none',
    );
    const order = ['good', 'note', 'caution', 'stop'];
    for (const rule of places)
      for (const place of ['outdoors', 'enclosed'])
        for (const time of [1, 4, 9]) {
          const rank = (control: string) =>
            order.indexOf(verdictOf(byTask(rule, [row({ task: 'hand-held-saw', control, place, time })]))?.level ?? '');
          expect(rank('water'), rule).toBeLessThanOrEqual(rank('extraction'));
          expect(rank('extraction'), rule).toBeLessThanOrEqual(rank('none'));
        }
  });

  it('says what enclosed means wherever a task is marked so, and only there', () => {
    for (const rule of places) {
      expect(codeOf(byTask(rule, [row({}), row({ place: 'enclosed' })]), 'place'), rule).toBe('enclosed-means');
      expect(has(byTask(rule, [row({})]), 'place')).toBe(false);
    }
  });

  it('is never better than wet: no row of the table lists it', () => {
    for (const task of tasks)
      for (const place of ['outdoors', 'enclosed'] as const)
        expect(factorAsked(task, 'none', place, 60)).toBeUndefined();
  });
});

describe('an engine indoors', () => {
  it('is a stop with carbon monoxide named, whatever the rules', () => {
    for (const rule of places) {
      const answer = byTask(rule, [row({ place: 'enclosed', power: 'engine' })]);
      expect(codeOf(answer), rule).toBe('engine-inside');
      expect(answer.cautions.map((c) => c.hazard)).toContain('carbon-monoxide');
      expect(has(answer, 'factor')).toBe(false);
    }
  });

  it('is the stop of a whole day in which it is one task of several', () => {
    const outdoors = row({ power: 'engine' });
    const inside = row({ place: 'enclosed', power: 'engine' });
    for (const work of [
      [outdoors, inside],
      [inside, outdoors],
    ]) {
      const answer = byTask('us-construction', work);
      expect(codeOf(answer)).toBe('engine-inside');
      expect(answer.cautions.map((c) => c.hazard)).toContain('carbon-monoxide');
    }
  });
});

describe('the control table', () => {
  it('asks for no less when the hours grow or the work moves indoors', () => {
    for (const task of tasks) {
      const { control } = controlTable[task];
      for (const hours of [1, 3.9, 4, 4.1, 9]) {
        const [out, inside] = [
          factorAsked(task, control, 'outdoors', hours * 3600),
          factorAsked(task, control, 'enclosed', hours * 3600),
        ];
        if (out !== undefined && inside !== undefined) expect(inside, task).toBeGreaterThanOrEqual(out);
        const later = factorAsked(task, control, 'outdoors', (hours + 1) * 3600);
        if (out !== undefined && later !== undefined) expect(later, task).toBeGreaterThanOrEqual(out);
      }
    }
  });

  it.each([
    [3.99, 'table-none', 0],
    [4, 'table-none', 0],
    [4.01, 'table-mask', 10],
  ])('hand-held saw outdoors for %d h: %s', (time, code, factor) => {
    const answer = byTask('us-construction', [row({ time })]);
    expect(codeOf(answer)).toBe(code);
    expect(numberlike(answer, 'factor')).toBe(factor);
  });

  it('four hours made of many parts are four hours', () => {
    const parts = Array.from({ length: 10 }, () => row({ time: 0.4 }));
    expect(codeOf(byTask('us-construction', parts))).toBe('table-none');
    expect(codeOf(byTask('us-construction', [...parts, row({ time: 0.01 })]))).toBe('table-mask');
  });

  it('a task with another control, or not listed there, is a stop', () => {
    expect(codeOf(byTask('us-construction', [row({ control: 'extraction' })]))).toBe('wrong-control');
    expect(codeOf(byTask('us-construction', [row({ task: 'ride-on-saw', place: 'enclosed' })]))).toBe('not-there');
  });

  it('a floor saw outdoors all day asks for no mask, and is still no promise', () => {
    const answer = byTask('us-construction', [row({ task: 'walk-behind-saw', power: 'engine', time: 9 })]);
    expect(codeOf(answer)).toBe('table-none');
    expect(verdictOf(answer)?.level).not.toBe('good');
  });

  it('a shop may go by it only for what is not its regular work', () => {
    expect(codeOf(byTask('us-general', [row({})], { regular: true }))).toBe('assess-shop');
    expect(codeOf(byTask('us-general', [row({})], { regular: false }))).toBe('table-none');
  });

  it('other places: Britain asks for 20, places without a table for a measurement', () => {
    expect(codeOf(byTask('gb', [row({ time: 0.1 })]))).toBe('britain');
    for (const rule of ['eu', 'es', 'fr', 'de', 'au', 'nz', 'za', 'ca-on', 'ca-qc'])
      expect(codeOf(byTask(rule, [row({})])), rule).toBe('no-table');
  });
});

describe('measured air', () => {
  it.each([
    [0.0249, 'under-limit'],
    [0.025, 'at-action'],
    [0.0251, 'at-action'],
    [0.0499, 'at-action'],
    [0.05, 'at-action'],
    [0.0501, 'over-limit'],
  ])('US, %d mg/m3: %s', (mg, code) => expect(codeOf(measured(mg))).toBe(code));

  it.each([
    [0.0999, 'under-limit'],
    [0.1, 'under-limit'],
    [0.1001, 'over-limit'],
  ])('Great Britain, %d mg/m3: %s', (mg, code) => expect(codeOf(measured(mg, { rule: 'gb' }))).toBe(code));

  it('three spells that make exactly the limit are not over it', () => {
    const spells = [
      { what: 'a', concentration: 0.1, time: 1 },
      { what: 'b', concentration: 0.2, time: 0.5 },
      { what: 'c', concentration: 0.0307692307692308, time: 6.5 },
    ];
    expect(codeOf(measured(0, { spells }))).toBe('at-action');
  });

  it.each([
    [0.5, 10],
    [0.501, 25],
    [1.25, 25],
    [1.26, 50],
  ])('US, %d mg/m3: mask of factor %d', (mg, factor) => expect(numberlike(measured(mg), 'factor')).toBe(factor));

  it('Britain: never less than 20, even under the limit', () => {
    expect(numberlike(measured(0.05, { rule: 'gb' }), 'factor')).toBe(20);
    expect(numberlike(measured(2.1, { rule: 'gb' }), 'factor')).toBe(40);
    expect(codeOf(measured(4.1, { rule: 'gb' }), 'mask')).toBe('mask-none');
  });

  it('no factor is lent from another country', () => {
    for (const rule of ['eu', 'es', 'fr', 'de', 'nz']) expect(has(measured(1, { rule }), 'factor'), rule).toBe(false);
  });

  it('the parts of a day make the whole, and a spell in two halves is one', () => {
    const whole = measured(0, { spells: [{ what: 'a', concentration: 0.3, time: 2 }], unsampled: 'zero' });
    const halves = measured(0, {
      spells: [
        { what: 'a', concentration: 0.3, time: 1 },
        { what: 'a', concentration: 0.3, time: 1 },
      ],
      unsampled: 'zero',
    });
    expect(figureOf(halves, 'average')).toBeCloseTo(figureOf(whole, 'average'), 15);
    expect(figureOf(whole, 'average')).toBeCloseTo(0.075e-6, 15);
  });

  it('a longer shift in the same air is never better', () => {
    const at = (shift: number) =>
      measured(0, { rule: 'eu', spells: [{ what: 'a', concentration: 0.09, time: 4 }], shift, unsampled: 'mean' });
    const shifts = [4, 8, 10, 12].map((s) => figureOf(at(s), 'average'));
    expect([...shifts].sort((a, b) => a - b)).toEqual(shifts);
    expect(codeOf(at(10), 'longShift')).toBe('long-over');
    expect(codeOf(at(8), 'longShift')).toBeUndefined();
  });

  it('a long shift is held against the scaled limit from both sides', () => {
    const at = (mg: number) =>
      codeOf(measured(0, { spells: [{ what: 'a', concentration: mg, time: 10 }], shift: 10 }), 'longShift');
    expect([0.0349, 0.035, 0.0351].map(at)).toEqual(['long-within', 'long-within', 'long-over']);
  });

  it('two-stroke exhaust near by takes the N filter away', () => {
    expect(codeOf(measured(0.1, { oil: false }), 'filter')).toBe('filter-any');
    expect(codeOf(measured(0.1, { oil: true, filterTime: 8 }), 'filter')).toBe('filter-r-p');
    expect(codeOf(measured(0.1, { oil: true, filterTime: 9 }), 'filter')).toBe('filter-p');
  });

  it('numbers of times over the limit grow with the air', () =>
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 10, noNaN: true }), (mg) => {
        expect(numberOf(measured(mg), 'ratio')).toBeCloseTo(mg / 0.05, 6);
      }),
    ));
});

it('every answer names a law and sends the reader to the rule of today', () => {
  for (const rule of places) {
    const answer = byTask(rule, [row({})]);
    expect(has(answer, 'law'), rule).toBe(true);
    expect(codeOf(answer, 'check')).toBe('check-local');
  }
});

function numberlike(answer: ReturnType<typeof answerOf>, key: string): number | undefined {
  const value = answer.values.find((v) => v.key === key);
  return value?.kind === 'count' ? value.value : undefined;
}

answersAnything(name);

it('a day has 24 hours of dusty work at most', () => {
  const shift = (hours: number) => () => byTask('us-construction', [row({ time: 16 }), row({ time: hours })]);
  for (const hours of [7.9, 8]) expect(shift(hours)).not.toThrow();
  expect(shift(9)).toThrow(/"over-a-day".*"hours":25/);
});
