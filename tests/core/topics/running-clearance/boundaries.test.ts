/**
 * Each verdict of the running clearance just below, at and just above its limit. On a solid shaft of the ring's own steel the
 * raceway grows by interference times bore over raceway: 25 / 31.25 = 0.8. Groups at 25 mm (ISO 5753-1): CN 5 to 20, C3 13 to 28,
 * C4 23 to 41.
 */
import { describe, expect, it } from 'vitest';
import { compute, fields, words } from '../../../../src/core/topics/running-clearance/index.ts';
import { sayer } from '../../../../src/core/contract/messages.ts';
import { readInputs } from '../../../../src/core/contract/read-inputs.ts';
import type { RawInputs } from '../../../../src/core/contract/field.ts';

const calm = {
  bore: 25,
  outside: 52,
  innerRaceway: 31.25,
  outerRaceway: 46.5,
  shaftMaterial: 'bearing-steel',
  surface: 'ideal',
  difference: 0,
  housingRise: 0,
  housingLeast: -40,
  housingMost: 0,
  housingOutside: 80,
};

function work(raw: RawInputs) {
  const read = readInputs(fields, { ...calm, ...raw });
  if (!read.ok) throw new Error(JSON.stringify(read));
  return compute(read.inputs);
}
function said(raw: RawInputs, key: string): string | undefined {
  const result = work(raw);
  if (!result.ok) throw new Error(`Refused: ${JSON.stringify(result)}`);
  const found = result.values.find((v) => v.key === key);
  return found?.kind === 'verdict' ? found.code : found?.kind === 'text' ? found.value : undefined;
}

describe('limits of the running clearance', () => {
  const running = (shaftLeast: number, shaftMost: number) => said({ shaftLeast, shaftMost }, 'verdict');

  it('clear as long as the tightest parts leave anything', () => {
    expect([6.24, 6.25, 6.26].map((most) => running(0, most))).toEqual(['runs-clear', 'runs-clear', 'may-preload']);
  });

  it('preloaded where the mean parts take more than the mean clearance, 12.5', () => {
    expect([15.62, 15.625, 15.63].map((i) => running(i, i))).toEqual(['may-preload', 'may-preload', 'preloaded']);
  });

  it('always where the loosest take more than the most, 20', () => {
    expect([24.99, 25, 25.01].map((i) => running(i, i))).toEqual(['preloaded', 'preloaded', 'always-preloaded']);
  });

  it('tells how to cure it without loosening the fit, or that no group does', () => {
    const says = (raw: RawInputs) => {
      const result = work(raw);
      const found = result.ok ? result.values.find((v) => v.key === 'verdict') : undefined;
      if (found?.kind !== 'verdict') throw new Error('no verdict');
      const say = sayer({});
      return words.verdicts[found.code]?.(found.data ?? {}, say) ?? '';
    };
    // C3 has 20.5 in the mean and C4 32; C4 keeps some with the tightest parts up to 23 / 0.8 = 28.75.
    const tight = (i: number, more: RawInputs = {}) => says({ shaftLeast: i, shaftMost: i, ...more });
    expect(tight(17)).toMatch(/C3 keeps 6\.9\sµm in the mean, one with clearance C4 some even/);
    expect(tight(25.6)).toMatch(/C3 keeps .* in the mean/);
    expect(tight(25.63)).toMatch(/C4 keeps some here even with the tightest parts/);
    expect(tight(40)).toMatch(/No larger group makes up/);
    for (const i of [17, 25.6, 25.63]) expect(tight(i)).toMatch(/Do not loosen a fit/);
    // The table's own k5, H7 and normal clearance at 25 mm: a caution, and never a looser seat.
    const common = {
      shaftLeast: 2,
      shaftMost: 21,
      housingLeast: -43,
      housingMost: 0,
      difference: 10,
      innerRaceway: '',
    };
    expect(says({ ...common, surface: 'ground' })).toMatch(/at its end here.*C3 keeps/);
    expect(says({ ...common, surface: 'ground' })).not.toMatch(/looser/);
  });

  it('names the smallest group that keeps clear', () => {
    const group = (shaftMost: number) => said({ shaftLeast: 0, shaftMost }, 'groupNeeded');
    expect([6.25, 6.26, 16.25, 16.26, 28.75, 28.76].map(group)).toEqual(['CN', 'C3', 'C3', 'C4', 'C4', undefined]);
  });

  it('tells of an outer ring that is loose when warm, where it was ever tight', () => {
    const loose = (housingLeast: number, housingMost: number) =>
      said({ shaftLeast: 0, shaftMost: 5, housingLeast, housingMost }, 'housingLoose');
    expect(loose(-10, 10)).toBeUndefined();
    expect(loose(-10.1, 10)).toBe('outer-loose-warm');
    expect(loose(-10, 0)).toBeUndefined();
    expect(loose(-10, 0.1)).toBe('outer-loose-warm');
  });

  it('refuses walls too thin to reckon with', () => {
    const refused = (raw: RawInputs) => {
      const result = work({ shaftLeast: 0, shaftMost: 5, ...raw });
      return result.ok ? '' : result.problems[0]?.field;
    };
    expect([25.2, 25.25, 25.3].map((innerRaceway) => refused({ innerRaceway }))).toEqual([
      'innerRaceway',
      'innerRaceway',
      '',
    ]);
    expect([51.7, 51.74, 51.8].map((outerRaceway) => refused({ outerRaceway }))).toEqual([
      '',
      'outerRaceway',
      'outerRaceway',
    ]);
    expect([24.4, 24.5, 24.6].map((shaftBore) => refused({ shaftBore }))).toEqual(['', 'shaftBore', 'shaftBore']);
    expect([52.5, 52.52, 52.6].map((housingOutside) => refused({ housingOutside }))).toEqual([
      'housingOutside',
      'housingOutside',
      '',
    ]);
    const inside = (bore: number) => refused({ bore }) !== 'bore';
    expect([51.9, 52, 52.1].map(inside)).toEqual([true, false, false]);
  });

  it('takes a very thick wall where none is given', () => {
    expect(work({ shaftLeast: 0, shaftMost: 5, housingOutside: '' }).ok).toBe(true);
  });
});
