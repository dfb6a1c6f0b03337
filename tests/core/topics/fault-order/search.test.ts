import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  blocks,
  compute,
  example,
  fields,
  halfSplit,
  orderBySingles,
  repeatedSearch,
  words,
} from '../../../../src/core/topics/fault-order/index.ts';
import type { RawInputs } from '../../../../src/core/contract/field.ts';
import { describeProblem, sayer } from '../../../../src/core/contract/messages.ts';
import { readInputs } from '../../../../src/core/contract/read-inputs.ts';

const weights = fc.array(fc.integer({ min: 1, max: 20 }), { minLength: 2, maxLength: 9 });

function answer(raw: RawInputs) {
  const read = readInputs(fields, raw);
  if (!read.ok) return { ok: false as const, problems: 'problems' in read ? read.problems : [] };
  return compute(read.inputs);
}

describe('a chain cut in two', () => {
  it('takes no more tests with the best cuts than in the middle or from one end', () => {
    fc.assert(
      fc.property(weights, (w) => {
        const split = halfSplit(w);
        expect(split.best).toBeLessThanOrEqual(split.middle + 1e-9);
        expect(split.best).toBeLessThanOrEqual(split.sequential + 1e-9);
      }),
    );
  });
  it('takes at least as many tests as there is doubt in bits', () => {
    fc.assert(
      fc.property(weights, (w) => {
        const sum = w.reduce((a, b) => a + b, 0);
        expect(halfSplit(w).best).toBeGreaterThanOrEqual(
          w.reduce((bits, x) => bits - (x / sum) * Math.log2(x / sum), 0) - 1e-9,
        );
      }),
    );
  });
  it('takes log2 n tests when n is a power of two and all are alike', () => {
    for (const n of [2, 4, 8, 16, 32])
      expect(halfSplit(Array.from({ length: n }, () => 1)).best).toBeCloseTo(Math.log2(n), 9);
  });
});

describe('checks that miss', () => {
  it('with sure checks are the textbook order', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 1, max: 20 }), fc.integer({ min: 1, max: 20 })), {
          minLength: 1,
          maxLength: 6,
        }),
        (rows) => {
          const total = rows.reduce((a, [x]) => a + x, 0);
          const [p, c] = [rows.map(([x]) => x / total), rows.map(([, m]) => m)];
          expect(
            repeatedSearch(
              p,
              p.map(() => 1),
              c,
              rows.length,
            ).expected,
          ).toBeCloseTo(orderBySingles(p, c).expected, 6);
        },
      ),
    );
  });
  it('are given up when none of them can find anything', () => {
    expect(repeatedSearch([0.5, 0.5], [0, 0], [1, 1], 3).order).toEqual([]);
  });
});

describe('the planner', () => {
  it('has words for where the search stands', () => {
    const rows = (answers: readonly string[]): RawInputs => ({
      suspects: [
        { name: 'Belt', likelihood: 60 },
        { name: 'Clutch', likelihood: 40 },
      ],
      checks: ['Belt', 'Clutch'].map((name, k) => ({
        name: `Look at the ${name}`,
        suspect: name,
        minutes: 5,
        answer: answers[k] ?? 'open',
      })),
      stripDowns: [],
    });
    const codes = [
      ['open', 'open'],
      ['shows', 'open'],
      ['clear', 'open'],
      ['clear', 'clear'],
      ['shows', 'shows'],
    ].map((a) => {
      const result = answer(rows(a));
      const verdict = result.ok ? result.values.find((v) => v.key === 'verdict') : undefined;
      return verdict?.kind === 'verdict' ? verdict.code : undefined;
    });
    expect(codes).toEqual(['check-next', 'found', 'check-next-only', 'contradiction', 'contradiction']);
    for (const code of codes) expect(words.verdicts[code ?? '']).toBeDefined();
  });

  it('says that two ways take as long where their figures read the same', () => {
    const says = (code: string, data: Record<string, number | string>) => words.verdicts[code]?.(data, sayer({}));
    const stop = (expected: number) => says('stop-here', { name: 'Look', minutes: 60, expected });
    expect(stop(60)).toMatch(/way out: 60 min\. Going on with "Look" takes as long on average/);
    expect(stop(60.1)).toMatch(/takes 60\.1 min on average/);
    const next = { name: 'Look', minutes: 5, chance: 30, expected: 12.3, second: 'Feel' };
    expect(says('check-next', { ...next, secondExpected: 12.3 })).toMatch(/starting with "Feel", as long\./);
    expect(says('check-next', { ...next, secondExpected: 12.4 })).toMatch(/"Feel", 12\.4 min\./);
  });

  it('says which row names a suspect that is not there', () => {
    const result = answer({
      suspects: [{ name: 'Belt', likelihood: 60 }],
      checks: [{ name: 'Look', suspect: 'Blade', minutes: 5 }],
      stripDowns: [],
    });
    const problem = result.ok ? undefined : result.problems[0];
    expect(problem?.field).toBe('checks.1.suspect');
    expect(problem ? describeProblem(problem, { fields, words }) : '').toMatch(/no suspect called "Blade"/);
  });

  it.each([
    [
      {
        suspects: [
          { name: 'Belt', likelihood: 60 },
          { name: 'Belt', likelihood: 10 },
        ],
      },
      'named-twice',
    ],
    [{ suspects: [{ name: 'Belt', likelihood: 0 }] }, 'nobody-likely'],
    [{ checks: [{ name: 'Look', suspect: 'Belt', minutes: 5, stripDown: 'Engine out' }] }, 'no-such-strip-down'],
    [
      {
        checks: [
          { name: 'Look', suspect: 'Belt', minutes: 5 },
          { name: 'Look', suspect: 'Belt', minutes: 5 },
        ],
      },
      'told-twice',
    ],
    [
      {
        suspects: [
          { name: 'Belt', likelihood: 50 },
          { name: 'Blade', likelihood: 10 },
        ],
        checks: [
          { name: 'Look', suspect: 'Belt', minutes: 5 },
          { name: 'Look', suspect: 'Blade', minutes: 6 },
        ],
      },
      'check-differs',
    ],
  ] as const)('refuses a list with a slip in it', (slip, code) => {
    const result = answer({
      suspects: [{ name: 'Belt', likelihood: 60 }],
      checks: [{ name: 'Look', suspect: 'Belt', minutes: 5 }],
      stripDowns: [],
      ...slip,
    });
    const codes = result.ok ? [] : result.problems.map((p) => p.code);
    expect(codes).toContain(code);
    for (const problem of result.ok ? [] : result.problems)
      expect(describeProblem(problem, { fields, words }).length).toBeGreaterThan(10);
  });

  it('asks first whether the drive drags the engine, on its own example', () => {
    const result = answer(example);
    const order = result.ok ? result.values.find((v) => v.key === 'order') : undefined;
    expect(order?.kind === 'table' ? order.rows[0]?.[1] : undefined).toBe('Pull the cord and watch the blade');
  });
});

describe('the building blocks', () => {
  const run = (name: keyof typeof blocks, raw: RawInputs) => {
    const read = readInputs(blocks[name].fields, raw);
    const result = read.ok
      ? blocks[name].compute(read.inputs)
      : { ok: false as const, problems: 'problems' in read ? read.problems : [] };
    if (!result.ok) return result.problems.map((p) => p.code);
    const expected = result.values.find((v) => v.key === 'expected');
    return expected?.kind === 'number' ? expected.value : NaN;
  };
  const rows = (...chances: number[]) => chances.map((chance, k) => ({ name: `s${k}`, chance, minutes: 3 }));
  it.each(['single-checks', 'exact-order'] as const)('%s refuse chances of more than all', (name) => {
    expect(run(name, { suspects: rows(80, 50, 50) })).toEqual(['more-than-all']);
    expect(run(name, { suspects: rows(60, 40) })).toBeCloseTo(3 + 0.4 * 3, 9);
  });
  it('a repeated search is for a fault that is one of these: 30 % alone is all of them', () => {
    // One suspect found in half of the checks of 2 min: 2 / 0.5.
    expect(run('repeated-search', { suspects: [{ name: 'A', chance: 30, finds: 50, minutes: 2 }] })).toBeCloseTo(4, 9);
    // Found in one of a thousand: 2 / 0.001, every turn of it counted.
    expect(run('repeated-search', { suspects: [{ name: 'A', chance: 100, finds: 0.1, minutes: 2 }] })).toBeCloseTo(
      2000,
      6,
    );
    expect(run('repeated-search', { suspects: [{ name: 'A', chance: 100, finds: 0.001, minutes: 2 }] })).toEqual([
      'too-small',
    ]);
    expect(run('repeated-search', { suspects: [{ name: 'A', chance: 0, finds: 50, minutes: 2 }] })).toEqual([
      'nobody-likely',
    ]);
  });
});
