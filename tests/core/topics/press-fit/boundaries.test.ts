/**
 * Each verdict of the press fit just below, at and just above its limit. The limits are reached by laws that need no sum of
 * ours: force goes as the length of the joint, stress as the interference.
 */
import { describe, expect, it } from 'vitest';
import { compute, example, fields } from '../../../../src/core/topics/press-fit/index.ts';
import { readInputs } from '../../../../src/core/contract/read-inputs.ts';
import { valueOf } from '../../../../src/core/contract/result.ts';
import type { RawInputs } from '../../../../src/core/contract/field.ts';

const base = { ...example, hub: 'carbon-steel', smoothing: 'no', least: 20, most: 100, hubOutside: '100 mm' };

function work(raw: RawInputs) {
  const read = readInputs(fields, { ...base, ...raw });
  if (!read.ok) throw new Error(JSON.stringify(read));
  return compute(read.inputs);
}
function answer(raw: RawInputs) {
  const result = work(raw);
  if (!result.ok) throw new Error(`Refused: ${JSON.stringify(result)}`);
  return result;
}
const code = (raw: RawInputs, key: string) => valueOf(answer(raw), key, 'verdict').code;
const around = (at: number) => [at * 0.999, at, at * 1.001];

describe('limits of the press fit', () => {
  it.each([
    [5_000, 'tool-vise', 'tool-arbor'],
    [20_000, 'tool-arbor', 'tool-hydraulic'],
    [150_000, 'tool-hydraulic', 'tool-too-much'],
  ])('the tool changes over %s N', (limit, below, above) => {
    const ten = valueOf(answer({ length: 10 }), 'pushIn', 'quantity').high ?? NaN;
    const tools = around((10 * limit) / ten).map((length) => code({ length }, 'tool'));
    expect(tools).toEqual([below, below, above]);
  });

  it('no force is needed up to no interference', () => {
    const tool = (most: number) => code({ least: -50, most }, 'tool');
    expect([-0.1, 0, 0.1].map(tool)).toEqual(['tool-none', 'tool-none', 'tool-vise']);
  });

  it.each([
    ['carbon-steel', 0.8, 'stress-fine', 'stress-high'],
    ['carbon-steel', 1, 'stress-high', 'stress-yields'],
    ['grey-iron', 0.5, 'stress-fine', 'stress-high'],
    ['grey-iron', 1, 'stress-high', 'stress-cracks'],
  ])('%s at a share of %s', (hub, limit, below, above) => {
    const share = valueOf(answer({ hub, most: 100 }), 'yieldShare', 'quantity').value;
    const codes = around((100 * limit) / share).map((most) => code({ hub, least: 0, most }, 'stress'));
    expect(codes).toEqual([below, below, above]);
  });

  it('refuses walls thinner than a thousandth, and figures the wrong way round', () => {
    const refused = (raw: RawInputs) => {
      const result = work(raw);
      return result.ok ? '' : result.problems[0]?.code;
    };
    const outside = (mm: number) => refused({ hubOutside: mm });
    expect([52.05, 52.052, 52.06].map(outside)).toEqual(['no-wall', 'no-wall', '']);
    const hole = (mm: number) => refused({ shaftBore: mm });
    expect([51.94, 51.948, 51.95].map(hole)).toEqual(['', 'no-inner-wall', 'no-inner-wall']);
    expect([99, 100, 101].map((least) => refused({ least, most: 100 }))).toEqual(['', '', 'least-above-most']);
    const friction = (frictionLow: number) => refused({ surface: 'own', frictionLow, frictionHigh: 0.15 });
    expect([0.14, 0.15, 0.16].map(friction)).toEqual(['', '', 'friction-order']);
  });

  it('shows no more figures than friction is known by', () => {
    for (const key of ['pressure', 'pushIn', 'torque']) expect(valueOf(answer({}), key, 'quantity').figures).toBe(2);
  });
});
