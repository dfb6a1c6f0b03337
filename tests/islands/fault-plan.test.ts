/** What the page of a complaint makes of its list: the machine in hand, answers in any order, suspects put aside. */
import { describe, expect, it } from 'vitest';
import { toEnd } from '../../src/core/contract/pieces.ts';
import { aboutMinutesApart } from '../../src/words/fault.ts';
import { inOrder, planAtRest, planFor, planning } from '../../src/islands/FaultSearch/plan-for.ts';
import { nothingYet, searchKind, type Given, type Search } from '../../src/islands/FaultSearch/kept.ts';

const suspect = (id: string, likelihood: number) => ({ id, name: id, likelihood });
const check = (id: string, of: string, minutes = 5) => ({
  id,
  name: id,
  minutes,
  tells: [{ suspect: of, ifFaulty: 0.9, ifSound: 0.05 }],
});
const page = {
  model: {
    suspects: [suspect('cord', 0.4), suspect('fuel', 0.3), suspect('spark', 0.2)],
    checks: [check('pull', 'cord'), check('smell', 'fuel'), check('test', 'spark'), check('smell-again', 'fuel', 9)],
  },
  checks: { pull: { how: '', hazards: [], kinds: ['cut-off-saw'] } },
  suspects: { cord: { why: '', kinds: ['cut-off-saw'] } },
  wayOutMinutes: 90,
};
const given = (answers: Record<string, Given['is']>): Search => ({
  ...nothingYet('x'),
  given: Object.fromEntries(Object.entries(answers).map(([k, is]) => [k, { is, name: k, at: 1 }])),
});
const chances = (search: Search, kind?: string) =>
  Object.fromEntries(planFor(page, search, kind).plan.belief.suspects.map((s) => [s.id, s.chance]));

describe('the machine in hand', () => {
  it('counts in everything while there is none', () => {
    expect(inOrder(planFor(page, nothingYet('x'), undefined))).toHaveLength(4);
  });
  it('leaves out what its kind does not have; the others take the share, something else keeps its own', () => {
    const now = planFor(page, nothingYet('x'), 'floor-saw');
    expect(inOrder(now)).not.toContain('pull');
    // 0.3 and 0.2 share out 0.9 as three to two; what is missing to 1 stays 0.1.
    expect(chances(nothingYet('x'), 'floor-saw')).toEqual({
      fuel: expect.closeTo(0.54, 12) as number,
      spark: expect.closeTo(0.36, 12) as number,
    });
    expect(now.plan.belief.somethingElse).toBeCloseTo(0.1, 12);
  });
});

describe('the plan that comes with the page', () => {
  const atRest = planAtRest(page);
  it('says of the untouched list what planning it says', () => {
    const { plan } = planFor(page, nothingYet('x'), undefined);
    expect(atRest).toMatchObject({ belief: plan.belief, next: plan.next, stop: plan.stop, answered: 0 });
    expect(inOrder({ model: page.model, plan: atRest })).toEqual(inOrder(planFor(page, nothingYet('x'), undefined)));
  });
  it('stands until something is answered, put aside, gone on with, or the saw has not all of the list', () => {
    const shown = { ...page, atRest };
    expect(toEnd(planning(shown, nothingYet('x'), 'cut-off-saw')).plan).toBe(atRest);
    const changed: [Search, string | undefined][] = [
      [given({ pull: 'sound' }), undefined],
      [{ ...nothingYet('x'), ruledOut: { cord: 'cord' } }, undefined],
      [{ ...nothingYet('x'), goOn: true }, undefined],
      [nothingYet('x'), 'floor-saw'],
    ];
    for (const [search, kind] of changed)
      expect(toEnd(planning(shown, search, kind))).toEqual(planFor(page, search, kind));
  });
});

describe('answers', () => {
  it('come to the same in whatever order they were given', () => {
    const one = chances(given({ pull: 'sound', smell: 'fault' }));
    const other = chances(given({ smell: 'fault', pull: 'sound' }));
    expect(one).toEqual(other);
  });
  it('of "not sure" and "can’t check now" say nothing about anybody', () => {
    expect(chances(given({ pull: 'unsure', smell: 'later' }))).toEqual(chances(nothingYet('x')));
  });
  it('left out one and all are no diagnosis', () => {
    const { plan } = planFor(
      page,
      given({ pull: 'later', smell: 'later', test: 'unsure', 'smell-again': 'later' }),
      undefined,
    );
    expect(plan.next).toBeUndefined();
    expect(plan.answered).toBe(0);
    expect(plan.found?.how ?? 'unchecked').toBe('unchecked');
  });
  it('stay in the list, behind what is still proposed', () => {
    const order = inOrder(planFor(page, given({ pull: 'sound' }), undefined));
    expect(order).toHaveLength(4);
    expect(order.at(-1)).toBe('pull');
  });
});

describe('after a finding', () => {
  it('the check that would make sure is offered, and "not it" goes on with the others', () => {
    const search = given({ smell: 'fault' });
    const { plan } = planFor(page, search, undefined);
    expect(plan.found?.id).toBe('fuel');
    expect(plan.found?.confirm?.id).toBe('smell-again');
    const on = planFor(page, { ...search, ruledOut: { fuel: 'fuel' } }, undefined).plan;
    expect(on.found).toBeUndefined();
    expect(on.next).toBeDefined();
    expect(on.belief.suspects.find((s) => s.id === 'fuel')?.chance).toBe(0);
  });
});

describe('a way out shorter than looking on', () => {
  const slow = {
    ...page,
    wayOutMinutes: 20,
    model: { ...page.model, checks: page.model.checks.map((c) => ({ ...c, minutes: 200 })) },
  };
  it('is said, and looking may go on all the same', () => {
    expect(planFor(slow, nothingYet('x'), undefined).plan.stop?.advised).toBe(true);
    expect(planFor(slow, { ...nothingYet('x'), goOn: true }, undefined).plan.next).toBeDefined();
  });
});

describe('a kept search', () => {
  it('is read back without what it does not know', () => {
    const read = searchKind.read(
      { title: 'x', given: { a: { is: 'fault', name: 'A', at: 3 }, b: { is: 'maybe' } }, ruledOut: { c: 'C', d: 4 } },
      1,
    );
    expect(read).toEqual({
      title: 'x',
      given: { a: { is: 'fault', name: 'A', at: 3 } },
      ruledOut: { c: 'C' },
      goOn: false,
    });
    expect(searchKind.read({ title: 'x' }, 1)).toBeUndefined();
  });
});

describe('two figures held against each other', () => {
  it('are said so finely that they differ, or that they hardly do', () => {
    const said = [92.4, 91.6, 88, 90.6, 90.4, 90].map((on) => aboutMinutesApart(90, on)?.join(' against '));
    const fine = '90 min against 92 min';
    expect(said).toEqual([fine, fine, '90 min against 88 min', '90 min against 91 min', undefined, undefined]);
    expect(aboutMinutesApart(90, 93)).toEqual(['90 min', '95 min']);
    expect(aboutMinutesApart(8, 9)).toEqual(['8 min', '9 min']);
    expect(aboutMinutesApart(9.6, 10.2)).toBeUndefined();
  });
});
