/** Unit factors against exact definitions and against mathjs, an outside reference. */
import { all, create, type Unit as MathUnit } from 'mathjs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  formatIn,
  fromUnit,
  readQuantity,
  toUnit,
  unitOf,
  units,
  type UnitKey,
} from '../../../src/core/quantity/index.ts';
import { runs } from '../../runs.ts';

const math = create(all ?? {});
const keys = Object.keys(units) as UnitKey[];

describe('exact definitions (NIST SP 811, appendix B)', () => {
  it.each<[UnitKey, number]>([
    ['in', 0.0254],
    ['ft', 0.3048],
    ['lb', 0.45359237],
    ['lbf', 4.4482216152605],
    ['hp', 745.69987158227022],
    ['gal', 3.785411784e-3],
  ])('1 %s', (key, value) => expect(Math.abs(fromUnit(1, key) - value) / value).toBeLessThan(1e-15));

  it('puts the zero of both temperature scales where they are defined', () => {
    expect(fromUnit(0, '°C')).toBe(273.15);
    expect(fromUnit(32, '°F')).toBeCloseTo(273.15, 10);
    expect(fromUnit(-40, '°F')).toBeCloseTo(fromUnit(-40, '°C'), 10);
  });
});

describe('every unit agrees with mathjs', () => {
  it.each(keys.filter((k) => unitOf(k).dimension !== 'ratio'))('%s', (key) => {
    const { math: name, zero } = unitOf(key);
    const one =
      zero === undefined ? (math.evaluate(/^\d/.test(name) ? name : `1 ${name}`) as MathUnit) : math.unit(1, name);
    const reference = Number(one.toSI().toJSON().value);
    // mathjs keeps psi to twelve figures and the year as 365.25 days.
    expect(Math.abs(fromUnit(1, key) - reference) / reference).toBeLessThan(1e-9);
  });
});

it('reads back what it wrote, in every unit', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...keys.filter((k) => k !== '1')),
      fc.double({ min: -1e6, max: 1e6, noNaN: true }),
      (key, value) => {
        const si = fromUnit(value, key);
        const text = formatIn(si, key, 6);
        const read = readQuantity(text, { dimension: unitOf(key).dimension, unit: key });
        if (!read.ok) throw new Error(`${text} was not read: ${JSON.stringify(read)}`);
        expect(Math.abs(toUnit(read.si, key) - value)).toBeLessThanOrEqual(5.1e-7 + Math.abs(value) * 1e-12);
      },
    ),
    { numRuns: runs(2000) },
  );
});

it('converts there and back without loss', () => {
  fc.assert(
    fc.property(fc.constantFrom(...keys), fc.double({ min: -1e9, max: 1e9, noNaN: true }), (key, value) => {
      expect(toUnit(fromUnit(value, key), key)).toBeCloseTo(
        value,
        value === 0 ? 6 : Math.max(0, 8 - Math.ceil(Math.log10(Math.abs(value) + 1))),
      );
    }),
    { numRuns: runs(1000) },
  );
});

it('gives no two units of one dimension the same spelling', () => {
  for (const key of keys) {
    const mine = [key, ...(unitOf(key).also ?? [])];
    const clash = keys.filter(
      (other) =>
        other !== key &&
        unitOf(other).dimension === unitOf(key).dimension &&
        [other, ...(unitOf(other).also ?? [])].some((s) => mine.includes(s)),
    );
    expect(clash, key).toEqual([]);
  }
});
