/** What counts as proof, when a search is no diagnosis, and when to stop. Figures worked by hand beside each check. */
import { describe, expect, it } from 'vitest';
import { planOrder, type FaultModel } from '../../../../src/core/topics/fault-order/index.ts';

type Row = readonly [name: string, minutes: number, ...tells: (readonly [string, number, number])[]];

function modelOf(suspects: Readonly<Record<string, number>>, ...checks: readonly Row[]): FaultModel {
  return {
    suspects: Object.entries(suspects).map(([id, likelihood]) => ({ id, name: id, likelihood })),
    checks: checks.map(([id, minutes, ...tells]) => ({
      id,
      name: id,
      minutes,
      tells: tells.map(([suspect, ifFaulty, ifSound]) => ({ suspect, ifFaulty, ifSound })),
    })),
  };
}
const shows = (check: string) => ({ check, shows: true });
const clear = (check: string) => ({ check, shows: false });

describe('a check that tells nothing', () => {
  const m = modelOf(
    { A: 0.85, B: 0.15 },
    ['useless', 1, ['A', 0.5, 0.5]],
    ['thorough', 20, ['A', 0.99, 0.01]],
    ['b', 10, ['B', 0.95, 0.05]],
  );
  it('is never proposed', () => {
    expect(planOrder(m).ranking.map((c) => c.id)).not.toContain('useless');
  });
  it('is no proof when it shows: the chance stays at 85 % and the search goes on', () => {
    const plan = planOrder(m, [shows('useless')]);
    expect(plan.belief.suspects[0]?.chance).toBeCloseTo(0.85, 12);
    expect(plan.found).toBeUndefined();
    expect(plan.next).toBeDefined();
  });
  it('with an equal chance for everybody who is left tells nothing, though it tells a sound machine apart', () => {
    const both = modelOf({ A: 0.85, B: 0.15 }, ['both', 1, ['A', 0.9, 0.05], ['B', 0.9, 0.05]], ['a', 5, ['A', 1, 0]]);
    expect(planOrder(both).ranking.map((c) => c.id)).toEqual(['a']);
    expect(planOrder(both, [shows('both')]).found).toBeUndefined();
    // With something else at 20 % it does: 0.68 x 0.905 against 0.2 x 0.0975 left for something else.
    const open = modelOf({ A: 0.68, B: 0.12 }, ['both', 1, ['A', 0.9, 0.05], ['B', 0.9, 0.05]], ['a', 5, ['A', 1, 0]]);
    const plan = planOrder(open, [shows('both')]);
    expect(plan.belief.suspects[0]?.chance).toBeCloseTo((0.68 * 0.905) / (0.8 * 0.905 + 0.2 * 0.0975), 12);
    expect(plan.found?.how).toBe('shown');
  });
});

describe('an inverted check', () => {
  const m = modelOf({ A: 0.95, B: 0.05 }, ['inverted', 1, ['A', 0.4, 0.9]], ['a', 5, ['A', 0.99, 0.01]]);
  it('lowers its suspect when it shows, from 95 to 89.4 %, and has not shown it', () => {
    const plan = planOrder(m, [shows('inverted')]);
    // 0.95 x 0.4 / (0.95 x 0.4 + 0.05 x 0.9) = 0.38 / 0.425
    expect(plan.belief.suspects[0]?.chance).toBeCloseTo(0.38 / 0.425, 12);
    expect(plan.found).toBeUndefined();
    expect(plan.next?.id).toBe('a');
  });
  it('raises its suspect when it does not show, but that is exclusion and no proof', () => {
    const plan = planOrder(modelOf({ A: 0.7, B: 0.3 }, ['inverted', 1, ['A', 0.1, 0.9]]), [clear('inverted')]);
    // 0.7 x 0.9 / (0.7 x 0.9 + 0.3 x 0.1) = 0.63 / 0.66
    expect(plan.found).toMatchObject({ id: 'A', how: 'excluded' });
    expect(plan.found?.chance).toBeCloseTo(0.63 / 0.66, 12);
  });
});

describe('stopping early', () => {
  const dear = modelOf({ A: 0.02, B: 0.01 }, ['a', 300, ['A', 1, 0]], ['b', 300, ['B', 1, 0]]);
  it('goes straight to the way out where the checks cost more: 60 minutes, not 652', () => {
    const plan = planOrder(dear, [], { fallbackMinutes: 60 });
    expect(plan.stop).toMatchObject({ minutes: 60, advised: true });
    // Going on with the first and then stopping: 300 + 0.98 x 60.
    expect(plan.stop?.goingOn).toBeCloseTo(358.8, 9);
    expect([plan.expectedMinutes, plan.bound, plan.next, plan.pathEnd]).toEqual([60, 60, undefined, 'stop']);
    // In the order listed, to the end: 300 + 0.98 x 300 + 0.97 x 60.
    expect(plan.listedMinutes).toBeCloseTo(652.2, 9);
  });
  it('is not offered when there is no way out', () => {
    const plan = planOrder(dear);
    expect([plan.stop, plan.next?.id]).toEqual([undefined, 'a']);
  });
  it.each([
    ['just below its worth', 29.9, true],
    ['exactly at its worth', 30, true],
    ['just above its worth', 30.1, false],
  ] as const)('a check %s', (_, minutes, made) => {
    // A sure check of an even chance spares half of a way out of 60 minutes: worth 30 minutes.
    const plan = planOrder(modelOf({ A: 0.5 }, ['a', minutes, ['A', 1, 0]]), [], { fallbackMinutes: 60 });
    expect(plan.stop?.advised).toBe(!made);
    expect(plan.next?.id).toBe(made ? 'a' : undefined);
    expect(plan.expectedMinutes).toBeCloseTo(Math.min(60, minutes + 30), 9);
  });
  it('ends the printed order at the way out where only the later checks are too dear', () => {
    const m = modelOf({ A: 0.5, B: 0.01 }, ['a', 5, ['A', 1, 0]], ['b', 50, ['B', 1, 0]]);
    const plan = planOrder(m, [], { fallbackMinutes: 60 });
    expect(plan.path.map((s) => s.id)).toEqual(['a']);
    expect(plan.pathEnd).toBe('stop');
    expect(plan.expectedMinutes).toBeCloseTo(5 + 0.5 * 60, 9);
  });
  it('is offered for a list too long to solve as well', () => {
    const rows = Array.from({ length: 14 }, (_, k) => `s${k}`);
    const long = modelOf(
      Object.fromEntries(rows.map((id) => [id, 0.01])),
      ...rows.map((id): Row => [`c-${id}`, 100, [id, 1, 0]]),
    );
    const plan = planOrder(long, [], { fallbackMinutes: 60 });
    expect(plan.method).toBe('ratio-rule');
    expect([plan.stop?.advised, plan.expectedMinutes, plan.next]).toEqual([true, 60, undefined]);
    expect(plan.bound).toBeLessThanOrEqual(60);
  });
});

describe('no diagnosis', () => {
  const m = modelOf({ A: 0.85, B: 0.15 }, ['a', 5, ['A', 0.95, 0.05]], ['b', 5, ['B', 0.95, 0.05]]);
  it('comes of skipping every check', () => {
    const plan = planOrder(m, [], { skipped: ['a', 'b'] });
    expect([plan.answered, plan.next, plan.found?.how]).toEqual([0, undefined, 'unchecked']);
    const even = planOrder(modelOf({ A: 0.5, B: 0.5 }, ['a', 5, ['A', 1, 0]]), [], { skipped: ['a'] });
    expect([even.answered, even.next, even.found, even.pathEnd]).toEqual([0, undefined, undefined, 'none-left']);
  });
  it('comes of a suspect no check tells about, however likely it was written down', () => {
    const plan = planOrder(modelOf({ A: 0.9, B: 0.1 }, ['b', 5, ['B', 1, 0]]));
    expect(plan.found).toMatchObject({ id: 'A', how: 'unchecked' });
    // Once the other one is looked at and cleared it is found by exclusion.
    expect(planOrder(modelOf({ A: 0.9, B: 0.1 }, ['b', 5, ['B', 1, 0]]), [clear('b')]).found?.how).toBe('excluded');
  });
});

describe('after a finding', () => {
  const m = modelOf(
    { belt: 0.5, clutch: 0.3, blade: 0.2 },
    ['turn', 2, ['belt', 0.9, 0.05]],
    ['press', 6, ['belt', 0.99, 0.02]],
    ['drum', 10, ['clutch', 0.95, 0.05]],
    ['rim', 3, ['blade', 0.95, 0.05]],
  );
  it('names the check that confirms, largest Youden index for its minutes', () => {
    const plan = planOrder(m, [shows('turn')]);
    expect(plan.found).toMatchObject({ id: 'belt', how: 'shown', confirm: { id: 'press', minutes: 6 } });
    // 0.5 x 0.9 / (0.45 + 0.5 x 0.05)
    expect(plan.found?.chance).toBeCloseTo(0.45 / 0.475, 12);
  });
  it('"not it, go on" puts the suspect at 0 and shares the rest by how well each explains what was seen', () => {
    const plan = planOrder(m, [shows('turn')], { ruledOut: ['belt'] });
    // Both others show a false alarm alike, so they keep 3 to 2.
    expect(plan.belief.suspects.map((s) => Number(s.chance.toFixed(9)))).toEqual([0, 0.6, 0.4]);
    expect(plan.found).toBeUndefined();
    expect(['drum', 'rim']).toContain(plan.next?.id);
    // What tells about the belt alone is worth nothing any more.
    expect(plan.ranking.map((c) => c.id)).not.toContain('press');
  });
  it('"not it" of two suspects leaves the third, found by exclusion once nothing can confirm it', () => {
    const plan = planOrder(m, [], { ruledOut: ['belt', 'clutch'] });
    expect(plan.next?.id).toBe('rim');
    const skipped = planOrder(m, [], { ruledOut: ['belt', 'clutch'], skipped: ['rim'] });
    expect(skipped.found).toMatchObject({ id: 'blade', how: 'excluded', chance: 1 });
  });
  it('"not it" of everybody on a complete list is a contradiction, with the chances of before', () => {
    const plan = planOrder(m, [], { ruledOut: ['belt', 'clutch', 'blade'] });
    expect(plan.belief.contradiction).toBe(true);
    expect(plan.belief.suspects.map((s) => s.chance)).toEqual([0.5, 0.3, 0.2]);
  });
});

it('the bound counts that a false alarm can end a search early', () => {
  // A 40 %, B 60 %, likely enough at 50 %. The check for A (1 min, 95/50) shows in 0.38 + 0.30 = 0.68 of cases, and A
  // then stands at 0.38/0.68 = 56 %: done, often wrongly. Else B is left, 60 min: 1 + 0.32 x 60 = 20.2 min.
  const suspects = { A: 0.4, B: 0.6 };
  const checks: Row[] = [
    ['a', 1, ['A', 0.95, 0.5]],
    ['b', 60, ['B', 1, 0]],
  ];
  expect(planOrder(modelOf(suspects, ...checks), [], { sure: 0.5 }).expectedMinutes).toBeCloseTo(20.2, 9);
  const nobody = Object.fromEntries(Array.from({ length: 13 }, (_, k) => [`x${k}`, 0]));
  const long = planOrder(modelOf({ ...suspects, ...nobody }, ...checks), [], { sure: 0.5 });
  expect(long.method).toBe('ratio-rule');
  expect(long.bound).toBeLessThanOrEqual(20.2 + 1e-9);
});
