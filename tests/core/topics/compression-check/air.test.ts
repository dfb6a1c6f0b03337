import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  compute,
  example,
  fields,
  gaugeElsewhere,
  standardPressure,
} from '../../../../src/core/topics/compression-check/index.ts';
import { readInputs } from '../../../../src/core/contract/read-inputs.ts';
import { valueOf, type Answer } from '../../../../src/core/contract/result.ts';
import type { RawInputs } from '../../../../src/core/contract/field.ts';

function answer(more: RawInputs): Answer {
  const read = readInputs(fields, { healthy: example.healthy, ...more });
  if (!read.ok) throw new Error(JSON.stringify(read));
  const result = compute(read.inputs);
  if (!result.ok) throw new Error(JSON.stringify(result));
  return result;
}

const pressures = fc.double({ min: 40e3, max: 110e3, noNaN: true });

describe('a compression gauge', () => {
  it('falls in proportion to the barometer, because the air outside drops out', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e5, max: 3e6, noNaN: true }), pressures, pressures, (gauge, here, there) => {
        // The same engine multiplies whatever air it breathes by the same factor.
        const factor = (gauge + here) / here;
        expect(gaugeElsewhere(gauge, here, there) / (there * factor - there)).toBeCloseTo(1, 8);
      }),
    );
  });

  it('reads less the higher it is carried', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -400, max: 5900, noNaN: true }),
        (h) => standardPressure(h + 50) < standardPressure(h),
      ),
    );
  });
});

describe('the verdict', () => {
  const code = (more: RawInputs, key = 'verdict') => valueOf(answer(more), key, 'verdict').code;

  it('goes from healthy to low as the reading falls, at sea level', () => {
    expect(code({ reading: '10 bar' })).toBe('compression-healthy');
    expect(code({ reading: '8 bar' })).toBe('compression-serviceable');
    expect(code({ reading: '7.9 bar' })).toBe('compression-worn');
    expect(code({ reading: '5.9 bar' })).toBe('compression-low');
  });

  it('does not condemn an engine for the mountain it stands on', () => {
    expect(code({ reading: '7.5 bar' })).toBe('compression-worn');
    expect(code({ reading: '7.5 bar', height: '2500 m' })).toBe('compression-healthy');
  });

  it('points to the rings when oil raises the reading, and elsewhere when it does not', () => {
    expect(code({ reading: '7 bar', oiled: '9 bar' }, 'oilVerdict')).toBe('rings-leak');
    expect(code({ reading: '7 bar', oiled: '7.2 bar' }, 'oilVerdict')).toBe('not-the-rings');
    expect(code({ reading: '7 bar', first: '2 bar' }, 'firstVerdict')).toBe('climbs-slowly');
    expect(code({ reading: '7 bar', first: '6 bar' }, 'firstVerdict')).toBe('jumps-up');
  });
});
