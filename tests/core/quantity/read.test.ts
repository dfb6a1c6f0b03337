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
    // A thousands mark no other reading is left for.
    ['1,234.5', 1.2345],
    ['1.234,5', 1.2345],
    ['1,234,567', 1234.567],
    ['1.234.567', 1234.567],
    ['1 250 mm', 1.25],
    ['1\u202f250 mm', 1.25],
    ["1'250 mm", 1.25],
    ['1’250', 1.25],
    ['-1,234.5 mm', -1.2345],
    // A space is a thousands mark only before three figures that are no fraction.
    ['1 100/128 in', 0.0254 * (1 + 100 / 128)],
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
    // Exact: a US quart is 57.75 in3, a fluid ounce 1.8046875 in3, a pint 28.875 in3 (NIST SP 811, app. B).
    ['2 qt', 'volume', 'L', 2 * 57.75 * 0.0254 ** 3],
    ['1 quart', 'volume', 'L', 57.75 * 0.0254 ** 3],
    ['2.6 fl oz', 'volume', 'mL', 2.6 * 1.8046875 * 0.0254 ** 3],
    ['2.6 oz', 'volume', 'mL', 2.6 * 1.8046875 * 0.0254 ** 3],
    ['1 pt', 'volume', 'L', 28.875 * 0.0254 ** 3],
    ['5 oz', 'mass', 'g', (5 * 0.45359237) / 16],
    // NIST SP 811, app. B.8: conventional inch of mercury, 3.386 389 E+03 Pa.
    ['29.92 inHg', 'pressure', 'kPa', 29.92 * 3386.38864],
    ['29.92 in Hg', 'pressure', 'kPa', 29.92 * 3386.38864],
    ['2 galones', 'volume', 'L', 2 * 231 * 0.0254 ** 3],
    ['2.5:1', 'ratio', '1', 2.5],
    ['5 to 2', 'ratio', '1', 2.5],
    ['1:4', 'ratio', '1', 0.25],
    ['15 %', 'ratio', '%', 0.15],
    ['15', 'ratio', '%', 0.15],
    ['1 in 10', 'ratio', '%', 0.1],
    ['3 out of 8', 'ratio', '%', 0.375],
    ['1 de cada 10', 'ratio', '%', 0.1],
    // As abbreviations and plurals are written at a bench.
    ['14 in.', 'length', 'mm', 0.3556],
    ['14 ins', 'length', 'mm', 0.3556],
    ['5 ft. 3 in.', 'length', 'mm', 1.6002],
    ['Ø 350 mm', 'length', 'mm', 0.35],
    ['Ø350', 'length', 'mm', 0.35],
    ['2 qts.', 'volume', 'L', 2 * 57.75 * 0.0254 ** 3],
    ['2.6 fl. oz.', 'volume', 'mL', 2.6 * 1.8046875 * 0.0254 ** 3],
    ['2 gals', 'volume', 'L', 2 * 231 * 0.0254 ** 3],
    ['5 ltr', 'volume', 'L', 0.005],
    ['9500 r.p.m.', 'rotation', 'rpm', 9500 / 60],
    ['9500/min', 'rotation', 'rpm', 9500 / 60],
    ['10 ft-lbs', 'torque', 'N·m', 13.558179483314],
    ['10 ft.lb', 'torque', 'N·m', 13.558179483314],
    ['90 in-lbs', 'torque', 'N·m', 90 * 0.1129848290276],
    ['130 psig', 'pressure', 'bar', 130 * 6894.757293168361],
    ['130 lb', 'pressure', 'bar', 130 * 6894.757293168361],
    ['9 bars', 'pressure', 'bar', 9e5],
    // NIST SP 811, app. B.8: kgf/cm2 98 066.5 Pa, millibar 100 Pa, mmHg 133.3224 Pa, atmosphere 101 325 Pa.
    ['9 kg/cm2', 'pressure', 'bar', 9 * 98066.5],
    ['1013 mbar', 'pressure', 'kPa', 101300],
    ['1013 hPa', 'pressure', 'kPa', 101300],
    ['760 mmHg', 'pressure', 'kPa', 760 * 133.322387],
    ['1 atm', 'pressure', 'kPa', 101325],
    ['212 deg F', 'temperature', '°C', 373.15],
  ])('%s as %s', (text, dimension, unit, value) => expect(si(text, dimension, unit) / value).toBeCloseTo(1, 8));

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
    ['1,23.4', 'two-points'],
    ['12,34,56', 'two-points'],
    ['1,234', 'two-readings'],
    ['-1,234 mm', 'two-readings'],
    ['1,234 blobs', 'unknown-unit'],
    ['1,234 kg', 'wrong-dimension'],
    ['9'.repeat(400), 'not-a-number'],
    ['1-5/4 in', 'mixed-fraction'],
    ['1 4/4 in', 'mixed-fraction'],
    ['3/0 in', 'zero-denominator'],
    ['12 furlongs', 'unknown-unit'],
    ['12 in.x', 'unknown-unit'],
    ['12 in..', 'unknown-unit'],
    ['12 inx', 'unknown-unit'],
    ['12 kg', 'wrong-dimension'],
    ['12 rpm', 'wrong-dimension'],
    ['5 in 3 ft', 'not-one-quantity'],
    ['5 ft 3 ft', 'not-one-quantity'],
    ['5 ft 3 in 1/2 in', 'not-one-quantity'],
    ['5 ft -3 in', 'not-one-quantity'],
    ['5 mm 3', 'not-one-quantity'],
    ['3/8 in + 0.002 in', 'sum'],
    ['2 * 25 mm', 'sum'],
    ['(1 in)', 'sum'],
  ])('"%s" gives %s', (text, code) => expect(refusal(text)).toBe(code));
});

describe('a comma that can mean two things', () => {
  const rpm = (min: number, max: number) =>
    readQuantity('9,500', { dimension: 'rotation', unit: 'rpm', fits: (n) => n * 60 >= min && n * 60 <= max });

  it('takes the reading that fits the box, and says so', () => {
    expect(rpm(100, 20_000)).toMatchObject({ ok: true, said: '9500 rpm', chosen: true });
    expect(rpm(1, 100)).toMatchObject({ ok: true, said: '9.5 rpm', chosen: true });
    const bore = readQuantity('19,996 mm', { dimension: 'length', unit: 'mm', fits: (n) => n <= 0.51 });
    expect(bore).toMatchObject({ ok: true, said: '19.996 mm', chosen: true });
  });

  it('offers both readings when both fit, each readable one way only', () => {
    const both = rpm(1, 20_000);
    const readings = !both.ok && 'problem' in both ? (both.problem.readings ?? []) : [];
    expect([!both.ok && 'problem' in both && both.problem.code, ...readings]).toEqual([
      'two-readings',
      '9.500',
      '9500',
    ]);
    expect(readings.map((r) => si(r, 'rotation', 'rpm') * 60)).toEqual([9.5, 9500]);
    expect(rpm(20_000, 30_000)).toMatchObject({ problem: { code: 'no-reading-fits', readings: ['9.500', '9500'] } });
  });

  it('tells the reader of every thousands mark it passed over, and of nothing else', () => {
    const chosen = (text: string) => readQuantity(text, { dimension: 'length', unit: 'mm' });
    for (const text of ['1,234.5', '1 250 mm', "1'250"]) expect(chosen(text), text).toMatchObject({ chosen: true });
    for (const text of ['1.25', '25,4', '1-3/16 in', '5 ft 3 in'])
      expect(chosen(text), text).not.toHaveProperty('chosen');
  });
});

it('says what it read in units as people write them', () => {
  const said = (text: string, dimension: Dimension, unit: UnitKey) => {
    const read = readQuantity(text, { dimension, unit });
    return read.ok && read.said;
  };
  expect(said('1-3/16 in', 'length', 'mm')).toBe('1.1875 in = 30.1625 mm');
  expect(said('90 °F', 'temperature-difference', '°C diff')).toBe('90 °F = 50 °C');
  expect(said('23', 'area', 'mm2')).toBe('23 mm²');
  expect(said('0.3', 'ratio', '1')).toBe('0.3');
});
