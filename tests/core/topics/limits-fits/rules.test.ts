import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  blocks,
  fitOf,
  grades,
  letters,
  limitsAt,
  nearestZones,
  readZone,
  stepEnds,
  stepIndex,
  whyRefused,
} from '../../../../src/core/topics/limits-fits/index.ts';
import { answersAnything } from '../../any-input.ts';

const um = (m: number | undefined) => (m === undefined ? undefined : Math.round(m * 1e7) / 10);
const anySize = fc.oneof(
  fc.double({ min: 1e-6, max: 0.5, noNaN: true }),
  fc.double({ min: 0.5, max: 3.15, noNaN: true }),
);
const anyZone = fc
  .tuple(fc.boolean(), fc.constantFrom(...letters), fc.constantFrom(...grades))
  .map(([hole, l, g]) => `${hole ? l.toUpperCase() : l}${g}`);

describe('limits and fits', () => {
  answersAnything('limits-fits');

  it('every step ends on a whole millimetre and holds its own end, not the one before', () => {
    stepEnds.forEach((end, i) => {
      expect(Number.isInteger(end)).toBe(true);
      expect(stepIndex(end / 1000)).toBe(i);
      expect(stepIndex(end / 1000 + 1e-9)).toBe(i + 1 < stepEnds.length ? i + 1 : -1);
    });
  });

  it('an inch size that is a whole millimetre lies in the step of that millimetre', () => {
    for (const end of stepEnds) expect(stepIndex((end / 25.4) * 0.0254), `${end} mm`).toBe(stepIndex(end / 1000));
  });

  it('within a step the limits do not change, and they lie one tolerance apart', () => {
    fc.assert(
      fc.property(anySize, anyZone, (size, zone) => {
        const end = stepEnds[stepIndex(size)];
        const limits = limitsAt(size, zone);
        expect(limits).toEqual(limitsAt((end ?? 0) / 1000, zone));
        if (!limits) return;
        const grade = readZone(zone)?.grade ?? '';
        const h = limitsAt(size, `h${grade}`);
        expect(um(limits.upper - limits.lower)).toBe(um(0 - (h?.lower ?? NaN)));
      }),
    );
  });

  it('a larger step never has a smaller tolerance, nor a coarser grade', () => {
    for (const g of grades) {
      stepEnds.slice(1).forEach((end, i) => {
        const [before, here] = [limitsAt((stepEnds[i] ?? 1) / 1000, `H${g}`), limitsAt(end / 1000, `H${g}`)];
        if (before && here) expect(here.upper, `H${g} ${end}`).toBeGreaterThanOrEqual(before.upper);
      });
    }
    for (const end of stepEnds)
      grades.slice(1).forEach((g, i) => {
        const [finer, coarser] = [limitsAt(end / 1000, `H${grades[i]}`), limitsAt(end / 1000, `H${g}`)];
        if (finer && coarser) expect(coarser.upper, `H${g} ${end}`).toBeGreaterThan(finer.upper);
      });
  });

  it('hole basis and shaft basis give the same clearance for a to g', () => {
    fc.assert(
      fc.property(
        anySize,
        fc.constantFrom('a', 'b', 'c', 'cd', 'd', 'e', 'ef', 'f', 'fg', 'g'),
        fc.constantFrom(...grades.slice(7, 14)),
        (size, l, g) => {
          const [hole, h, shaft, H] = [
            limitsAt(size, `${l.toUpperCase()}${g}`),
            limitsAt(size, `h${g}`),
            limitsAt(size, `${l}${g}`),
            limitsAt(size, `H${g}`),
          ];
          expect(hole === undefined).toBe(shaft === undefined);
          if (!hole || !h || !shaft || !H) return;
          const [onShaft, onHole] = [fitOf(hole, h), fitOf(H, shaft)];
          expect(um(onShaft.least)).toBe(um(onHole.least));
          expect(um(onShaft.most)).toBe(um(onHole.most));
        },
      ),
    );
  });

  it('hole basis and shaft basis give the same interference for K to ZC one grade apart, over 3 to 500 mm: that is what delta is for', () => {
    for (const end of stepEnds.filter((e) => e > 3 && e <= 500)) {
      for (const l of ['k', 'm', 'n', 'p', 'r', 's', 't', 'u', 'v', 'x', 'y', 'z', 'za', 'zb', 'zc']) {
        for (const g of ['5', '6', '7', ...(['k', 'm', 'n'].includes(l) ? ['8'] : [])]) {
          const finer = String(Number(g) - 1);
          const [hole, h, H, shaft] = [
            limitsAt(end / 1000, `${l.toUpperCase()}${g}`),
            limitsAt(end / 1000, `h${finer}`),
            limitsAt(end / 1000, `H${g}`),
            limitsAt(end / 1000, `${l}${finer}`),
          ];
          if (!hole || !h || !H || !shaft) continue;
          // M6 over 250 to 315 mm is set by hand, 2 micrometres off the rule.
          const off = l === 'm' && g === '6' && end > 250 && end <= 315 ? 2 : 0;
          expect(um(fitOf(hole, h).most), `${l}${g} ${end}`).toBe((um(fitOf(H, shaft).most) ?? NaN) - off);
        }
      }
    }
  });

  it('M6 is set by hand over 250 to 315 mm and follows the rule on both sides', () => {
    expect(um(limitsAt(0.25, 'M6')?.upper)).toBe(-8);
    expect([um(limitsAt(0.2501, 'M6')?.upper), um(limitsAt(0.315, 'M6')?.upper)]).toEqual([-9, -9]);
    expect(um(limitsAt(0.3151, 'M6')?.upper)).toBe(-10);
  });

  it('blank cells of the standard are refused', () => {
    for (const [mm, zone] of [
      [24, 't6'],
      [14, 'v6'],
      [18, 'y7'],
      [25, 'j8'],
      [60, 'cd7'],
      [51, 'EF8'],
      [51, 'fg5'],
      [1, 'a9'],
      [1, 'B9'],
      [1, 'N9'],
      [1, 'h14'],
      [25, 'K9'],
      [25, 'j9'],
      [25, 'J5'],
      [25, 'P2'],
      [501, 'K9'],
      [600, 'ef6'],
      [3150, 'J5'],
    ] as const) {
      expect(limitsAt(mm / 1000, zone), `${mm} ${zone}`).toBeUndefined();
      expect(whyRefused(mm / 1000, zone, { size: 'size', zone: 'zone' })?.code, `${mm} ${zone}`).toBe('zone-undefined');
    }
    expect(limitsAt(0.0011, 'N9')?.upper).toBe(-4e-6);
  });

  it('a refusal names zones that exist, the nearest first', () => {
    expect(nearestZones(0.025, { hole: false, letter: 'j', grade: '8' })).toEqual(['j7', 'js8', 'k8']);
    expect(nearestZones(0.024, { hole: false, letter: 't', grade: '6' })).toEqual(['s6', 'u6']);
    expect(nearestZones(0.025, { hole: true, letter: 'h', grade: '20' })).toEqual(['H18']);
    fc.assert(
      fc.property(anySize, anyZone, (size, zone) => {
        const problem = whyRefused(size, zone, { size: 'size', zone: 'zone' });
        if (!problem) return;
        const nearest = String(problem.data?.['nearest']).split(', ');
        expect(nearest.length).toBeGreaterThan(0);
        for (const near of nearest) expect(limitsAt(size, near), `${zone} at ${size} -> ${near}`).toBeDefined();
      }),
    );
  });

  it.each([0, -0.01, 3.15001, 4, NaN, Infinity])('the size %s m is outside the table', (size) => {
    expect(limitsAt(size, 'H7')).toBeUndefined();
    expect(whyRefused(size, 'H7', { size: 'size', zone: 'zone' })?.code).toBe('size-outside');
  });

  it('odd spellings of a zone are understood or refused, never guessed', () => {
    expect(limitsAt(0.025, 'Js7')).toEqual(limitsAt(0.025, 'JS7'));
    expect(limitsAt(0.025, ' H 7 ')).toEqual(limitsAt(0.025, 'H7'));
    for (const odd of ['', '7H', 'H', 'H7.5', 'HH7', 'H-7', 'h7h']) expect(limitsAt(0.025, odd), odd).toBeUndefined();
  });

  it('a block refuses what the topic refuses', () => {
    expect(blocks.limits.compute({ size: 0.025, zone: 'q7' })).toMatchObject({
      ok: false,
      problems: [{ code: 'zone-undefined' }],
    });
    expect(blocks['it-grade'].compute({ size: 0.001, grade: '14' })).toMatchObject({
      ok: false,
      problems: [{ code: 'grade-undefined', data: { nearest: 'IT01 to IT13' } }],
    });
    expect(blocks['it-grade'].compute({ size: 0.6, grade: 'IT0' })).toMatchObject({
      ok: false,
      problems: [{ code: 'grade-undefined', data: { nearest: 'IT1 to IT18' } }],
    });
    expect(blocks.delta.compute({ size: 0.025, grade: '9' })).toMatchObject({ ok: false });
  });
});
