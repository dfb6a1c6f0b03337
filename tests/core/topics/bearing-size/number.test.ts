/** Numbers as they stand on rings, and the verdicts of the caliper just below, at and just above their limits. */
import { describe, expect, it } from 'vitest';
import { compute, fields, readNumber, words } from '../../../../src/core/topics/bearing-size/index.ts';
import { describeProblem, sayer } from '../../../../src/core/contract/messages.ts';
import { readInputs } from '../../../../src/core/contract/read-inputs.ts';
import type { RawInputs } from '../../../../src/core/contract/field.ts';

function work(raw: RawInputs) {
  const read = readInputs(fields, raw);
  return read.ok ? compute(read.inputs) : { ok: false as const, problems: 'problems' in read ? read.problems : [] };
}

function verdict(raw: RawInputs, key: string) {
  const result = work(raw);
  if (!result.ok) throw new Error(`Refused: ${JSON.stringify(result)}`);
  const found = result.values.find((v) => v.key === key);
  return found?.kind === 'verdict'
    ? { code: found.code, says: words.verdicts[found.code]?.(found.data ?? {}, sayer({})) ?? '' }
    : undefined;
}

const named = (designation: string, more: RawInputs = {}) => ({ known: 'designation', designation, ...more });
const caliper = (bore: number, outside: number, width: number, more: RawInputs = {}) => ({
  known: 'readings',
  bore,
  outside,
  width,
  ...more,
});

describe('the number on the ring', () => {
  it.each([
    // Trade usage, no source: 2RS two seals, Z and ZZ shields, C2 to C4 clearance, P6 and P5 class.
    ['6205', '6205', undefined, undefined, ''],
    ['6205-2RS', '6205', undefined, undefined, '2RS'],
    ['6204ZZ', '6204', undefined, undefined, 'ZZ'],
    ['6204 2rs c3', '6204', 'C3', undefined, '2RS'],
    ['6205-2RS/C3', '6205', 'C3', undefined, '2RS'],
    ['6203ZZC4', '6203', 'C4', undefined, 'ZZ'],
    ['6305 P6 C2', '6305', 'C2', 'P6', ''],
    ['62052RS', '6205', undefined, undefined, '2RS'],
    ['61902-2Z', '61902', undefined, undefined, '2Z'],
    ['S 6002 P5', '6002', undefined, 'P5', 'S'],
    ['6220 C3', '6220', 'C3', undefined, ''],
  ])('%s', (typed, digits, group, ringClass, left) => {
    const read = readNumber(typed);
    expect(read?.bearing.designation).toBe(digits);
    expect([read?.group, read?.ringClass, read?.left]).toEqual([group, ringClass, left]);
  });

  it.each(['NU205', '22205', '6299-2RS', '30205', 'C3', ''])('%s is not one held here', (typed) => {
    expect(readNumber(typed)).toBeUndefined();
  });

  it('says what it took over and what it left out', () => {
    expect(verdict(named('6204 2rs c3'), 'readAs')?.says).toMatch(/^Read as 6204, clearance C3\. Left out: 2RS\./);
    expect(verdict(named('6204'), 'readAs')).toBeUndefined();
    const result = work(named('6204 2rs c3'));
    const used = result.ok ? result.values.find((v) => v.key === 'groupUsed') : undefined;
    expect(used).toMatchObject({ value: 'C3' });
  });

  it('a mark on the ring does not overrule another choice without a word', () => {
    const refused = work(named('6204 C3', { group: 'C4' }));
    expect(refused.ok ? [] : refused.problems).toMatchObject([{ field: 'group', code: 'clearance-two-ways' }]);
    expect(work(named('6204 C3', { group: 'C3' })).ok).toBe(true);
    const grade = work(named('6204 P6', { ringClass: 'P5' }));
    expect(grade.ok ? [] : grade.problems).toMatchObject([{ field: 'ringClass', code: 'class-two-ways' }]);
  });

  it('what is no number at all is refused by name', () => {
    const refused = work(named('seal 2RS'));
    const said = refused.ok ? '' : describeProblem(refused.problems[0] ?? { field: '', code: '' }, { fields, words });
    expect(said).toMatch(/Number on the ring must be .*6205-2RS C3.*seal 2RS/);
  });
});

describe('caliper readings', () => {
  it('shows no figure smaller than a caliper shows', () => {
    expect(verdict(caliper(25, 52, 15), 'match')?.says).toMatch(/to the last figure of a caliper/);
    expect(verdict(caliper(25.004, 52, 15), 'match')?.says).toMatch(/to the last figure of a caliper/);
    expect(verdict(caliper(25.006, 52, 15), 'match')?.says).toMatch(/to within 0\.01\u00a0mm/);
    expect(verdict(caliper(25.1, 52, 15), 'match')?.says).toMatch(/to within 0\.1\u00a0mm/);
  });

  it('accepts a difference up to what is asked for', () => {
    const code = (bore: number) => verdict(caliper(bore, 52, 15, { allow: 0.3 }), 'match')?.code;
    expect([25.29, 25.3, 25.31].map(code)).toEqual(['one-fits', 'one-fits', 'none-fits']);
  });

  it('takes wear for more than a caliper errs', () => {
    const worn = (bore: number, outside: number) => verdict(caliper(bore, outside, 15), 'wear')?.code;
    expect([25.049, 25.05, 25.051].map((b) => worn(b, 52))).toEqual([undefined, undefined, 'ring-worn']);
    expect([51.951, 51.95, 51.949].map((o) => worn(25, o))).toEqual([undefined, undefined, 'ring-worn']);
  });

  it('a bore as large as the outside is refused', () => {
    const code = (bore: number) => {
      const r = work(caliper(bore, 52, 15));
      return r.ok ? 'taken' : r.problems[0]?.code;
    };
    expect([51.9, 52, 52.1].map(code)).toEqual(['taken', 'bore-too-large', 'bore-too-large']);
  });
});
