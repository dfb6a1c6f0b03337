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

  it('changes at each share and not beside it', () => {
    for (const [limit, under, at] of [
      [10, 'compression-serviceable', 'compression-healthy'],
      [8, 'compression-worn', 'compression-serviceable'],
      [6, 'compression-low', 'compression-worn'],
    ] as const) {
      expect(code({ reading: `${limit * 0.999} bar` })).toBe(under);
      expect(code({ reading: `${limit} bar` })).toBe(at);
      expect(code({ reading: `${limit * 1.001} bar` })).toBe(at);
    }
  });

  it('reads the first pull with the last: a quick climb to a good reading is no leak', () => {
    expect(code({ reading: '7 bar', first: '3.49 bar' }, 'firstVerdict')).toBe('climbs-slowly');
    expect(code({ reading: '7 bar', first: '3.5 bar' }, 'firstVerdict')).toBe('jumps-up');
    expect(code({ reading: '7 bar', first: '3.51 bar' }, 'firstVerdict')).toBe('jumps-up');
    expect(code({ reading: '11 bar', first: '8 bar' }, 'firstVerdict')).toBe('jumps-up-to-good');
    expect(code({ reading: '11 bar', first: '4 bar' }, 'firstVerdict')).toBe('climbs-slowly-to-good');
  });
});

describe('thin air', () => {
  it('is one air for power and mixture: as much as the barometer says, on a day as warm', () => {
    const at = answer({ reading: '7 bar', barometer: '81.06 kPa' });
    const [power, richer] = [valueOf(at, 'power', 'quantity').value, valueOf(at, 'richer', 'quantity').value];
    // 81.06 is 0.8 of 101.325; the mixture goes with the root of the density (gas law).
    expect(power).toBeCloseTo(0.8, 9);
    expect(richer).toBeCloseTo(1 / Math.sqrt(0.8) - 1, 9);
  });
});
