/** What a mechanic types is what the almanac reads. */
import { describe, expect, it } from 'vitest';
import { readQuantity, type Dimension, type UnitKey } from '../../../src/core/quantity/index.ts';

function si(text: string, dimension: Dimension, unit: UnitKey): number {
  const read = readQuantity(text, { dimension, unit });
  if (!read.ok) throw new Error(`${text}: ${JSON.stringify(read)}`);
  return read.si;
}

function refusal(text: string, dimension: Dimension = 'length', unit: UnitKey = 'mm'): string {
  const read = readQuantity(text, { dimension, unit });
  if (read.ok) throw new Error(`${text} was read as ${read.si}`);
  return 'sum' in read ? 'sum' : read.problem.code;
}

describe('lengths', () => {
  // Exact by definition: 1 in = 25.4 mm (NIST SP 811, app. B).
  it.each([
    ['25.4', 0.0254],
    ['25,4 mm', 0.0254],
    ['1 in', 0.0254],
    ['1-3/16 in', 0.0301625],
    ['1 3/16"', 0.0301625],
    ['1⅜ in', 0.034925],
    ['1⅜"', 0.034925],
    ['⅜ in', 0.009525],
    ['3/8in', 0.009525],
    ['5 ft 3 in', 1.6002],
    ['5\'3"', 1.6002],
    ['5′ 3 1/2″', 1.6129],
    ['0.0005 in', 0.0000127],
    ['-0.0005 in', -0.0000127],
    ['−0.5 mm', -0.0005],
    ['25 µm', 0.000025],
    ['25 μm', 0.000025],
    ['25um', 0.000025],
    ['0.5 thou', 0.0000127],
    ['1e-3 m', 0.001],
    ['1.200', 0.0012],
    ['0,375 in', 0.009525],
    ['350 MM', 0.35],
    ['.5 in', 0.0127],
  ])('%s', (text, metres) => expect(si(text, 'length', 'mm')).toBeCloseTo(metres, 12));

  it('takes a bare number in the unit beside the box', () => {
    expect(si('1-3/16', 'length', 'in')).toBeCloseTo(0.0301625, 12);
    expect(si('8', 'length', 'µm')).toBeCloseTo(8e-6, 15);
  });
});

describe('other measures', () => {
  it.each<[string, Dimension, UnitKey, number]>([
    ['5 hp', 'power', 'kW', 5 * 745.69987158227022],
    ['12 lbf', 'force', 'N', 12 * 4.4482216152605],
    ['12 lb', 'force', 'N', 12 * 4.4482216152605],
    ['9500 ft/min', 'speed', 'm/s', 48.26],
    ['5400 rpm', 'rotation', 'rpm', 90],
    ['5400', 'rotation', 'rpm', 90],
    ['80 m/s', 'speed', 'm/s', 80],
    ['68 °F', 'temperature', '°C', 293.15],
    ['-5 C', 'temperature', '°C', 268.15],
    ['20', 'temperature', '°C', 293.15],
    ['20', 'temperature', '°F', 266.4833333333],
    ['36 °F', 'temperature-difference', '°C diff', 20],
    ['20 °C', 'temperature-difference', '°C diff', 20],
    ['1 h 30 min', 'time', 'h', 5400],
    ['12 N·m', 'torque', 'N·m', 12],
    ['12 Nm', 'torque', 'N·m', 12],
    ['10 ft lb', 'torque', 'N·m', 13.558179483314],
    ['1000 psi', 'pressure', 'MPa', 6894757.293168361],
    ['0.5 L/min', 'flow', 'L/min', 0.0005 / 60],
    ['15 %', 'ratio', '%', 0.15],
    ['15', 'ratio', '%', 0.15],
  ])('%s as %s', (text, dimension, unit, value) => expect(si(text, dimension, unit) / value).toBeCloseTo(1, 10));

  it('keeps temperatures and temperature differences apart', () => {
    expect(si('20 °C', 'temperature', '°C')).toBeCloseTo(293.15, 10);
    expect(si('20 °C', 'temperature-difference', '°C diff')).toBeCloseTo(20, 10);
    expect(refusal('20 K', 'length')).toBe('wrong-dimension');
  });
});

describe('what is not read', () => {
  it.each([
    ['', 'missing'],
    ['   ', 'missing'],
    ['abc', 'not-a-number'],
    ['mm', 'not-a-number'],
    ['1.2.3', 'two-points'],
    ['1,234.5', 'two-readings'],
    ['1.234,5', 'two-readings'],
    ['1,234', 'two-readings'],
    ['1,234,567', 'two-readings'],
    ["1'000 mm", 'two-readings'],
    ['1’250', 'two-readings'],
    ['9'.repeat(400), 'not-a-number'],
    ['1-5/4 in', 'mixed-fraction'],
    ['1 4/4 in', 'mixed-fraction'],
    ['3/0 in', 'zero-denominator'],
    ['12 furlongs', 'unknown-unit'],
    ['12 inx', 'unknown-unit'],
    ['12 kg', 'wrong-dimension'],
    ['12 rpm', 'wrong-dimension'],
    ['5 in 3 ft', 'not-one-quantity'],
    ['5 mm 3', 'not-one-quantity'],
    ['3/8 in + 0.002 in', 'sum'],
    ['2 * 25 mm', 'sum'],
    ['(1 in)', 'sum'],
  ])('"%s" gives %s', (text, code) => expect(refusal(text)).toBe(code));
});
