/** Figures that stand in one place only: a slip of the pen in any of them fails here. */
import { describe, expect, it } from 'vitest';
import {
  beltArea,
  beltMass,
  blocks,
  highestSpeed,
  leastPulley,
  pushExtra,
  serviceFactor,
  type Driver,
  type Hours,
  type Load,
  type Section,
} from '../../../../src/core/topics/belt-tension/index.ts';
import { readInputs } from '../../../../src/core/contract/read-inputs.ts';
import type { RawInputs } from '../../../../src/core/contract/field.ts';

const hours: readonly Hours[] = ['short', 'day', 'long'];

it('service factors are as in the table of a belt-design page (service-factor-table); the crushing row is from memory', () => {
  const rows: readonly [Driver, Load, readonly number[]][] = [
    ['multi', 'light', [1, 1.1, 1.2]],
    ['multi', 'medium', [1.1, 1.2, 1.3]],
    ['multi', 'heavy', [1.2, 1.3, 1.4]],
    ['multi', 'crushing', [1.3, 1.4, 1.5]],
    ['motor', 'heavy', [1.2, 1.3, 1.4]],
    ['single', 'light', [1.1, 1.2, 1.3]],
    ['single', 'medium', [1.2, 1.3, 1.4]],
    ['single', 'heavy', [1.4, 1.5, 1.6]],
    ['single', 'crushing', [1.5, 1.6, 1.8]],
  ];
  for (const [driver, load, row] of rows)
    expect(
      hours.map((h) => serviceFactor(driver, load, h)),
      `${driver} ${load}`,
    ).toEqual(row);
});

it('masses in kg/m: Z, A, B from worksheets, C from Jindal, D from Shigley’s constant; the rest from memory', () => {
  const printed: Readonly<Record<Section, number>> = {
    Z: 0.06,
    A: 0.1,
    B: 0.17,
    C: 0.35,
    D: 0.603,
    E: 0.97,
    SPZ: 0.072,
    SPA: 0.112,
    SPB: 0.192,
    SPC: 0.37,
    PH: 0.005,
    PJ: 0.008,
    PK: 0.02,
    PL: 0.036,
    PM: 0.12,
  };
  for (const [section, mass] of Object.entries(printed)) {
    const { value, low, high } = beltMass(section as Section);
    expect(value, section).toBe(mass);
    expect(low, section).toBeLessThanOrEqual(value);
    expect(high, section).toBeGreaterThanOrEqual(value);
  }
  // Remembered figures carry the spread that printed ones show, 15 %.
  expect([beltMass('PJ').low, beltMass('PJ').high]).toEqual([0.008 * 0.85, 0.008 * 1.15]);
  expect([beltMass('B').low, beltMass('B').high, beltMass('C').low]).toEqual([0.17, 0.193, 0.3]);
});

it('stiffness allowances in N, least ribbed pulleys in mm and belt speeds in m/s are the remembered ones', () => {
  expect((['Z', 'A', 'B', 'C', 'D', 'SPZ', 'PJ'] as const).map(pushExtra)).toEqual([10, 15, 20, 29, 59, 0, 0]);
  expect((['PH', 'PJ', 'PK', 'PL', 'PM'] as const).map(leastPulley)).toEqual([13, 20, 45, 75, 180]);
  expect((['Z', 'E', 'SPZ', 'SPC', 'PJ', 'PK', 'PL', 'PM'] as const).map(highestSpeed)).toEqual([
    30, 30, 40, 40, 60, 50, 40, 35,
  ]);
});

it('the section of a C belt is that of Jindal’s 22 x 14 mm', () => {
  // 14 (22 - 14 tan 20) mm2, tan 20 = 0.36397.
  expect(beltArea('C') * 1e6).toBeCloseTo(236.66, 2);
});

describe('a block refuses what its drive refuses', () => {
  const problem = (name: keyof typeof blocks, raw: RawInputs) => {
    const read = readInputs(blocks[name].fields, raw);
    const result = read.ok ? blocks[name].compute(read.inputs) : undefined;
    return result?.ok ? 'an answer' : result?.problems[0]?.code;
  };

  it.each(['belt-length', 'span'] as const)('%s: pulleys that touch or overlap', (name) => {
    // 100 and 300 mm touch at 200 mm.
    const at = (centre: string) => problem(name, { small: '100 mm', large: '300 mm', centre });
    expect(['101 mm', '199.9 mm', '200 mm', '200.1 mm'].map(at)).toEqual([
      'pulleys-touch',
      'pulleys-touch',
      'pulleys-touch',
      'an answer',
    ]);
  });

  it('arc-factor: more than once round', () => {
    expect(problem('arc-factor', { wrap: '720°' })).toBe('too-large');
  });

  it('deflection-force: a push deeper than the span is long', () => {
    const push = { tension: '100 N', span: '400 mm', extra: 0 };
    expect(problem('deflection-force', { ...push, deflection: '500 mm' })).toBe('pushed-too-far');
    expect(problem('deflection-force', { ...push, deflection: '50 mm' })).toBe('an answer');
  });
});
