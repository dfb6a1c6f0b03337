import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compute, fields, recommend, ringFit, seatForm } from '../../../../src/core/topics/bearing-fit/index.ts';
import { ringLimits } from '../../../../src/core/topics/bearing-size/index.ts';
import { housingSeats, limitsAt, shaftSeats } from '../../../../src/core/topics/limits-fits/index.ts';
import { readInputs } from '../../../../src/core/contract/read-inputs.ts';
import { valueOf } from '../../../../src/core/contract/result.ts';
import type { RawInputs } from '../../../../src/core/contract/field.ts';
import { answersAnything } from '../../any-input.ts';

const size = (min: number) => fc.double({ min, max: 0.5, noNaN: true });
const um = (m: number) => Math.round(m * 1e7) / 10;

function answer(raw: RawInputs) {
  const read = readInputs(fields, raw);
  const result = read.ok ? compute(read.inputs) : undefined;
  if (!result?.ok) throw new Error(`Refused: ${JSON.stringify(result ?? read)}`);
  return result;
}

const worn = (mm: number): RawInputs => ({
  seat: 'shaft',
  size: 25,
  zone: 'k5',
  basis: 'readings',
  readings: [{ across: mm, quarter: mm }],
});
const bore = (mm: number, material = 'aluminium-die-cast'): RawInputs => ({
  seat: 'housing',
  size: 52,
  zone: 'N7',
  material,
  basis: 'readings',
  readings: [{ across: mm, quarter: mm }],
});
const verdict = (raw: RawInputs, key: string) => valueOf(answer(raw), key, 'verdict').code;

describe('bearing fit', () => {
  const zone = fc.constantFrom('k5', 'j6', 'g6', 'N7', 'H7', 'P7', 'q7');
  answersAnything('bearing-fit', {
    seat: fc.constantFrom('shaft', 'housing'),
    size: fc.double({ min: 6, max: 180, noNaN: true }),
    zone,
  });

  describe('a measured seat', () => {
    const near = fc.double({ min: 24.5, max: 25.5, noNaN: true });
    answersAnything('bearing-fit', {
      seat: fc.constantFrom('shaft', 'housing'),
      size: fc.constant(25),
      zone,
      basis: fc.constant('readings'),
      ring: fc.option(near, { nil: undefined }),
      readings: fc.array(fc.record({ across: near, quarter: near }), { minLength: 1, maxLength: 4 }),
    });
  });

  it('refuses a reading that can only be a slip, and keeps a badly worn one', () => {
    const refused = (raw: RawInputs) => {
      const read = readInputs(fields, raw);
      const result = read.ok ? compute(read.inputs) : undefined;
      return result && !result.ok ? result.problems.map((p) => `${p.field} ${p.code}`) : [];
    };
    expect(
      refused({
        ...worn(25),
        readings: [
          { across: 35.1, quarter: 25.1 },
          { across: 25, quarter: 25.002 },
        ],
      }),
    ).toEqual(['readings.1.across reading-far']);
    expect(refused({ ...worn(25), ring: 52 })).toEqual(['ring reading-far']);
    expect(refused(worn(24.5))).toEqual([]);
  });

  it('the spread of the fit is the seat tolerance and the ring tolerance together', () => {
    fc.assert(
      fc.property(fc.boolean(), size(0.006), fc.constantFrom('Normal', 'P6', 'P5'), fc.nat(11), (onShaft, d, c, i) => {
        const name = (onShaft ? shaftSeats : housingSeats)[i] ?? 'h6';
        const made = ringFit(onShaft ? 'shaft' : 'housing', d, name, c);
        const [limits, ring] = [limitsAt(d, name), ringLimits(onShaft ? 'bore' : 'outside', d, c)];
        if (!made || !limits || !ring) return;
        expect(um(made.fit.most - made.fit.least)).toBeCloseTo(um(limits.upper - limits.lower - ring.lower), 6);
        expect(um(made.fit.mean * 2)).toBeCloseTo(um(made.fit.most + made.fit.least), 6);
      }),
    );
  });

  it('a finer bearing class never widens the fit', () => {
    fc.assert(
      fc.property(size(0.006), (d) => {
        const [normal, p6, p5] = (['Normal', 'P6', 'P5'] as const).map((c) => ringFit('shaft', d, 'k5', c)?.fit);
        if (!normal || !p6 || !p5) return;
        expect(p6.most).toBeLessThanOrEqual(normal.most);
        expect(p5.most).toBeLessThanOrEqual(p6.most);
      }),
    );
  });

  it('calls a worn shaft loose, a fresh one good and a fat one tight', () => {
    expect(verdict(worn(24.98), 'seatVerdict')).toBe('seat-loose');
    expect(verdict(worn(24.998), 'seatVerdict')).toBe('seat-slack');
    expect(verdict(worn(25.006), 'seatVerdict')).toBe('seat-good');
    expect(verdict(worn(25.03), 'seatVerdict')).toBe('seat-tight');
  });

  it('says what a loose seat needs, by what it is made of', () => {
    expect(verdict(worn(24.98), 'needs')).toBe('needs-shaft');
    expect(verdict(bore(52.02), 'needs')).toBe('needs-light-housing');
    expect(verdict(bore(52.02, 'grey-iron'), 'needs')).toBe('needs-iron-housing');
    expect(answer(bore(51.98)).values.find((v) => v.key === 'needs')).toBeUndefined();
  });

  it('a measured ring decides better than its class', () => {
    // 24.999 is below the zone (25.002), yet a ring measured 24.990 is held by 9 micrometres, more than the least the zone gives.
    expect(verdict({ ...worn(24.999), gauge: 1 }, 'seatVerdict')).toBe('seat-slack');
    expect(verdict({ ...worn(24.999), ring: 24.99, gauge: 1 }, 'seatVerdict')).toBe('seat-fit-right');
  });

  it('reads taper along the seat and out-of-round across it', () => {
    const form = seatForm([
      { across: 25.01e-3, quarter: 25.008e-3 },
      { across: 25.004e-3, quarter: 25.002e-3 },
    ]);
    expect([um(form.taper), um(form.outOfRound), um(form.mean - 25e-3)]).toEqual([6, 2, 6]);
  });

  it('advises the same zone whatever the size within a row, and never a tight one for a ring that does not turn', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('light', 'normal', 'heavy'),
        fc.constantFrom('solid', 'split', 'thin', 'hot-shaft'),
        fc.boolean(),
        size(0.006),
        (load, housing, slides, d) => {
          const still = recommend({ seat: 'housing', size: d, turning: 'inner', load, housing, slides });
          expect(['G7', 'H7', 'J7']).toContain(still.zone);
          const shaft = recommend({ seat: 'shaft', size: d, turning: 'outer', load, housing, slides });
          expect(shaft.zone).toBe(slides ? 'g6' : 'h6');
        },
      ),
    );
  });

  it('a light-alloy housing loses hold when warm and an iron one does not', () => {
    const left = (material: string) =>
      valueOf(answer({ seat: 'housing', size: 52, zone: 'N7', material }), 'warmInterference', 'quantity').value;
    expect(left('magnesium')).toBeLessThan(left('aluminium-cast'));
    expect(left('aluminium-cast')).toBeLessThan(left('grey-iron'));
    expect(um(left('grey-iron'))).toBeGreaterThan(17.5);
  });

  it('warns of magnesium only in a magnesium housing', () => {
    const hazards = (material: string) =>
      answer({ seat: 'housing', size: 52, zone: 'N7', material }).cautions.map((c) => c.hazard);
    expect(hazards('magnesium')).toContain('magnesium');
    expect(hazards('grey-iron')).not.toContain('magnesium');
  });
});
