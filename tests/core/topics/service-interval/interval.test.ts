import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { meanLife } from '../../../../src/core/chance/index.ts';
import {
  bestAge,
  compute,
  costRate,
  dueEvents,
  dutyInterval,
  example,
  fields,
  flatBand,
  sortedList,
  whicheverFirst,
  words,
} from '../../../../src/core/topics/service-interval/index.ts';
import { dateText, dayNumber } from '../../../../src/core/calendar/index.ts';
import { readInputs } from '../../../../src/core/contract/read-inputs.ts';
import type { RawInputs } from '../../../../src/core/contract/field.ts';
import { runs } from '../../../runs.ts';

const shape = fc.double({ min: 1.3, max: 6, noNaN: true });
const planned = fc.integer({ min: 1, max: 200 });

function answer(raw: RawInputs) {
  const read = readInputs(fields, raw);
  if (!read.ok) return { ok: false as const, problems: 'problems' in read ? read.problems : [] };
  return compute(read.inputs);
}

function linesOf(raw: RawInputs) {
  const read = readInputs(fields, raw);
  return read.ok ? sortedList(read.inputs as Parameters<typeof sortedList>[0]) : [];
}

describe('the age at which to replace a part', () => {
  it('shrinks by the same factor as the life', () => {
    fc.assert(
      fc.property(
        shape,
        planned,
        fc.integer({ min: 2, max: 20 }),
        fc.double({ min: 0.1, max: 1, noNaN: true }),
        (b, cost, times, factor) => {
          const costs = { planned: cost, failure: cost * times };
          const [clean, dusty] = [
            bestAge({ shape: b, scale: 400 }, costs),
            bestAge({ shape: b, scale: 400 * factor }, costs),
          ];
          if (clean !== undefined && dusty !== undefined) expect(dusty / clean).toBeCloseTo(factor, 6);
          else expect(clean).toBe(dusty);
        },
      ),
    );
  });

  it('comes sooner the dearer a failure is', () => {
    fc.assert(
      fc.property(shape, planned, fc.integer({ min: 2, max: 20 }), (b, cost, times) => {
        const at = (k: number) => bestAge({ shape: b, scale: 400 }, { planned: cost, failure: cost * k }) ?? Infinity;
        expect(at(times + 1)).toBeLessThanOrEqual(at(times));
      }),
    );
  });

  it('costs no more than running to failure, nor than any other age', () => {
    fc.assert(
      fc.property(
        shape,
        planned,
        fc.integer({ min: 2, max: 20 }),
        fc.double({ min: 0.05, max: 5, noNaN: true }),
        (b, cost, times, other) => {
          const [life, costs] = [
            { shape: b, scale: 400 },
            { planned: cost, failure: cost * times },
          ];
          const best = bestAge(life, costs);
          if (best === undefined) return;
          const rate = costRate(life, costs, best);
          expect(rate).toBeLessThanOrEqual((costs.failure / meanLife(life)) * (1 + 1e-9));
          expect(rate).toBeLessThanOrEqual(costRate(life, costs, other * best) * (1 + 1e-9));
          const band = flatBand(life, costs, best, 0.05);
          expect(costRate(life, costs, band.low)).toBeLessThanOrEqual(rate * 1.0500001);
          if (band.high !== Infinity) expect(costRate(life, costs, band.high)).toBeLessThanOrEqual(rate * 1.0500001);
        },
      ),
    );
  });

  it('does not exist for parts that do not wear or whose failure is cheap', () => {
    expect(bestAge({ shape: 1, scale: 400 }, { planned: 1, failure: 5 })).toBeUndefined();
    expect(bestAge({ shape: 3, scale: 400 }, { planned: 5, failure: 5 })).toBeUndefined();
  });
});

describe('the calendar', () => {
  it('counts days as the language does, from 1600 to 2400', () => {
    fc.assert(
      fc.property(fc.integer({ min: -135140, max: 157054 }), (n) => {
        const text = new Date(n * 86400000).toISOString().slice(0, 10);
        expect(dateText(n)).toBe(text);
        expect(dayNumber(text)).toBe(n);
      }),
      { numRuns: runs(1000) },
    );
  });

  it.each(['2026-02-29', '2026-13-01', '2026-00-10', '2026-04-31', '26-04-01', 'tomorrow'])(
    'knows no day called %s',
    (text) => {
      expect(dayNumber(text)).toBeUndefined();
    },
  );
});

describe('a service', () => {
  it('is due by the hours or the calendar, whichever comes first', () => {
    fc.assert(
      fc.property(fc.integer({ min: -50, max: 500 }), fc.integer({ min: -50, max: 500 }), (hours, calendar) => {
        expect(whicheverFirst(hours, calendar).days).toBe(Math.min(hours, calendar));
      }),
    );
  });

  it('is never shortened below the smallest share', () => {
    expect(dutyInterval(100, { dust: 0.25, water: 0.7, load: 0.7 }, 0.2)).toBe(20);
    expect(dutyInterval(100, { dust: 0.5, water: 1, load: 1 }, 0.2)).toBe(50);
  });

  it('keeps its calendar limit in dust', () => {
    const row = { machine: 'Saw', task: 'Oil', base: '100 h', limit: 30, perDay: '0.5 h', daysPerWeek: 5 };
    for (const dust of ['clean', 'dusty']) {
      const result = answer({ start: '2026-03-02', tasks: [{ ...row, dust }] });
      expect(result.ok ? result.values.find((v) => v.key === 'dueDate') : undefined).toMatchObject({
        value: '2026-04-01',
      });
    }
  });

  it('always falls on a day that can be written, however far off', () => {
    for (const [start, row] of [
      ['9999-12-31', { limit: 60 }],
      ['2026-03-02', { base: '100000 h', perDay: '0.01 h' }],
      ['2026-03-02', { base: '1 h', since: '100000 h', perDay: '0.01 h' }],
    ] as const) {
      const result = answer({ start, tasks: [{ machine: 'Saw', task: 'Oil', ...row }] });
      expect(result.ok ? result.values.find((v) => v.key === 'dueDate') : undefined).toMatchObject({
        value: expect.stringMatching(/^\d{4}-\d{2}-\d{2}$/) as unknown,
      });
    }
  });

  it('stands in one list for all machines, the soonest first', () => {
    const result = answer(example);
    const list = result.ok ? result.values.find((v) => v.key === 'list') : undefined;
    const days = list?.kind === 'table' ? list.rows.map((r) => Number(r[1])) : [];
    expect(days).toEqual([...days].sort((a, b) => a - b));
    expect(days.length).toBe(3);
  });

  it('always gets the same name in the calendar', () => {
    const lines = linesOf(example);
    const events = dueEvents(lines, 'shop.example');
    expect(events).toEqual(dueEvents(lines, 'shop.example'));
    expect(new Set(events.map((e) => e.uid)).size).toBe(3);
    expect(events[0]?.uid).toBe('cut-off-saw-no-1.check-the-belt-clean-its-grooves@shop.example');
  });

  it('keeps its name in the calendar when its day moves, so that the old day is replaced', () => {
    const later = dueEvents(
      linesOf({ start: '2026-03-02', tasks: [{ machine: 'Saw', task: 'Oil', base: '10 h' }] }),
      'shop.example',
    );
    const sooner = dueEvents(
      linesOf({ start: '2026-03-02', tasks: [{ machine: 'Saw', task: 'Oil', base: '10 h', since: '8 h' }] }),
      'shop.example',
    );
    expect(sooner[0]?.date).not.toBe(later[0]?.date);
    expect(sooner[0]?.uid).toBe(later[0]?.uid);
  });

  it('is numbered in the calendar when the machine has another of the same name, and stands once when typed twice', () => {
    const oil = (base: string) => ({ machine: 'Saw', task: 'Oil', base });
    const names = dueEvents(
      linesOf({
        start: '2026-03-02',
        tasks: [oil('20 h'), oil('10 h'), oil('10 h'), { machine: 'Saw', task: 'Oil 2', base: '30 h' }],
      }),
      'shop.example',
    );
    expect(names.map((e) => e.uid)).toEqual([
      'saw.oil@shop.example',
      'saw.oil.2@shop.example',
      'saw.oil-2@shop.example',
    ]);
  });

  it.each([
    [{ start: '2026-02-30' }, 'start', 'no-such-day'],
    [{ start: '2026-03-02', tasks: [{ machine: 'Saw', task: 'Oil' }] }, 'tasks.1.base', 'no-interval'],
    [
      { start: '2026-03-02', tasks: [{ machine: 'Saw', task: 'Oil', base: 10, last: '2026-03-05' }] },
      'tasks.1.last',
      'done-after-start',
    ],
    [
      { start: '2026-03-02', replace: true, lifeFrom: 'records', records: [{ hours: 5 }, { hours: 5 }, { hours: 5 }] },
      'records',
      'no-fit',
    ],
  ] as const)('with a slip in it is refused', (raw, field, code) => {
    const result = answer(raw);
    expect(result.ok ? [] : result.problems.map((p) => [p.field, p.code])).toEqual([[field, code]]);
    expect(words.problems[code]).toBeDefined();
  });
});

describe('advice on the clock', () => {
  const clock = (raw: RawInputs) => {
    const result = answer({ start: '2026-03-02', replace: true, ...raw });
    const v = result.ok ? result.values.find((x) => x.key === 'clock') : undefined;
    return v?.kind === 'verdict' ? v.code : undefined;
  };
  it.each([
    [{ shape: 2.5 }, 'clock-pays'],
    [{ shape: 1.2 }, 'clock-hardly-pays'],
    [{ shape: 1 }, 'clock-does-not-wear'],
    [{ planned: 300, failure: 300 }, 'clock-failure-is-cheap'],
  ] as const)('is plain', (raw, code) => {
    expect(clock(raw)).toBe(code);
    expect(words.verdicts[code]).toBeDefined();
  });
});
