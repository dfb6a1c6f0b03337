/** Hours run since a service: typed, off the meter, or estimated from its day; and what a meter says. Worked by hand. */
import { describe, expect, it } from 'vitest';
import type { RawInputs } from '../../../../src/core/contract/field.ts';
import { readInputs } from '../../../../src/core/contract/read-inputs.ts';
import { valueOf } from '../../../../src/core/contract/result.ts';
import { atMeter, compute, fields, words } from '../../../../src/core/topics/service-interval/index.ts';
import { sayer } from '../../../../src/core/contract/messages.ts';

function answer(raw: RawInputs) {
  const read = readInputs(fields, raw);
  return read.ok ? compute(read.inputs) : { ok: false as const, problems: 'problems' in read ? read.problems : [] };
}
function worked(raw: RawInputs) {
  const result = answer(raw);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result;
}
const task = { machine: 'Saw', task: 'Belt', base: '10 h', perDay: '2 h', daysPerWeek: 5 };

describe('the hours run since', () => {
  it('are estimated from the day it was done and the use, and that is said', () => {
    // 328 days at 10 h a week are 468.6 h; 458.6 h over, at 10/7 h a day 321 days: since 2026-01-08.
    const a = worked({ start: '2026-11-25', tasks: [{ ...task, last: '2026-01-01' }] });
    const verdict = valueOf(a, 'verdict', 'verdict');
    expect(verdict).toMatchObject({ code: 'overdue', data: { since: 'estimated', date: '2026-01-08', days: 321 } });
    expect(words.verdicts['overdue']?.(verdict.data ?? {}, sayer({}))).toMatch(/estimated from its use/);
    expect(valueOf(a, 'hoursLeft', 'quantity').value / 3600).toBeCloseTo(10 - (328 * 10) / 7, 6);
    expect(a.working.find((s) => s.formula === 'service-interval/since')?.gave.value).toBeCloseTo(468.571, 3);
  });
  it('typed come before an estimate, and nothing is said then', () => {
    const a = worked({ start: '2026-11-25', tasks: [{ ...task, last: '2026-01-01', since: '0 h' }] });
    expect(valueOf(a, 'verdict', 'verdict')).toMatchObject({ code: 'due-by-hours', data: { since: 'typed', days: 7 } });
  });
  it('come off the meter where it was read both times, and the list says at which reading it is due', () => {
    const a = worked({
      start: '2026-11-25',
      tasks: [{ ...task, last: '2026-01-01', meter: '1000 h', meterThen: '996 h' }],
    });
    // 4 h since, 6 h left at 10/7 h a day: 4.2 days.
    expect(valueOf(a, 'verdict', 'verdict').data).toMatchObject({ since: 'meter', days: 4 });
    const list = valueOf(a, 'list', 'table');
    expect(list.rows[0]?.[list.columns.findIndex((c) => c.key === 'meter')]).toBeCloseTo(1006 * 3600, 3);
  });
  it('are none where nothing is said: just done', () => {
    expect(valueOf(worked({ start: '2026-11-25', tasks: [task] }), 'verdict', 'verdict').data).toMatchObject({
      since: 'new',
      days: 7,
    });
  });
  it('of a meter that reads less than before are refused', () => {
    const result = answer({ start: '2026-11-25', tasks: [{ ...task, meter: '995 h', meterThen: '996 h' }] });
    expect(result.ok ? [] : result.problems.map((p) => [p.field, p.code])).toEqual([
      ['tasks.1.meterThen', 'meter-backwards'],
    ]);
  });
});

it('the working of the soonest is its own, also where another row has the same names', () => {
  const a = worked({ start: '2026-11-25', tasks: [{ ...task, base: '100 h' }, task] });
  expect(valueOf(a, 'interval', 'quantity').value).toBe(36000);
  expect(a.working[0]?.put.find((p) => p.symbol === 't_b')?.value).toBe(10);
});

describe('an hour meter at 1,000 h', () => {
  it.each([
    [100, 10, 'due', 10, 1000, 1100],
    [300, 10, 'not due', 3, 900, 1200],
    [250, 10, 'due', 4, 1000, 1250],
    [330, 10, 'due', 3, 990, 1320],
    [330, 9.9, 'not due', 3, 990, 1320],
    [505, 10, 'due', 1, 505, 1010],
    [505, 9.9, 'not due', 1, 505, 1010],
    [2000, 10, 'not due', 0, 0, 2000],
  ])('every %d h, within %f h: %s', (every, near, due, times, last, next) => {
    const said = atMeter(1000 * 3600, every * 3600, near * 3600);
    expect([said.due ? 'due' : 'not due', said.times, said.last / 3600, said.next / 3600]).toEqual([
      due,
      times,
      last,
      next,
    ]);
  });
});
