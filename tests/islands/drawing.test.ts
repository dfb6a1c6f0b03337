import fc from 'fast-check';
import { expect, it } from 'vitest';
import { layOut } from '../../src/islands/BeltTension/layout.ts';
import { linear, niceSteps, spreadOut } from '../../src/islands/kit/index.ts';

const places = fc.array(fc.double({ min: -500, max: 500, noNaN: true }), { minLength: 1, maxLength: 8 });

it('labels never overlap and never leave the picture while there is room for them', () => {
  fc.assert(
    fc.property(places, (wanted) => {
      const put = spreadOut(wanted, 12, 0, 200);
      const sorted = [...put].sort((a, b) => a - b);
      expect(Math.min(...put)).toBeGreaterThanOrEqual(0);
      expect(Math.max(...put)).toBeLessThanOrEqual(200 + 1e-9);
      for (let i = 1; i < sorted.length; i += 1)
        expect((sorted[i] ?? 0) - (sorted[i - 1] ?? 0)).toBeGreaterThanOrEqual(12 - 1e-9);
    }),
  );
});

it('labels with room around them stay where they belong, in their order', () => {
  expect(spreadOut([150, 20, 80], 12, 0, 200)).toEqual([150, 20, 80]);
});

it('a scale never leaves its range', () => {
  fc.assert(
    fc.property(fc.double({ noDefaultInfinity: false }), (v) => {
      const at = linear(0, 10, 50, 350)(v);
      expect(at).toBeGreaterThanOrEqual(50);
      expect(at).toBeLessThanOrEqual(350);
    }),
  );
});

it('steps on an axis are ones, twos or fives, and few enough to read', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1e-6, max: 1e6, noNaN: true }),
      fc.double({ min: 1e-6, max: 1e6, noNaN: true }),
      (a, width) => {
        const steps = niceSteps(a, a + width, 5);
        expect(steps.length).toBeLessThanOrEqual(6);
        const step = (steps[1] ?? 0) - (steps[0] ?? 0);
        if (steps.length > 2)
          expect([1, 2, 5, 10]).toContain(Math.round(step / 10 ** Math.floor(Math.log10(step) + 1e-6)));
      },
    ),
  );
});

it('a belt lies square on both pulleys wherever it touches them', () => {
  const size = fc.double({ min: 10, max: 1500, noNaN: true });
  fc.assert(
    fc.property(size, size, fc.double({ min: 0, max: 6000, noNaN: true }), (engine, blade, gap) => {
      const { left, right, top, bottom, scale } = layOut({ engine, blade, centre: (engine + blade) / 2 + gap + 1 }, 60);
      expect(Math.hypot(top.x1 - left.x, top.y1 - left.y)).toBeCloseTo(left.r, 6);
      expect(Math.hypot(bottom.x2 - right.x, bottom.y2 - right.y)).toBeCloseTo(right.r, 6);
      const square = (top.x2 - top.x1) * (top.x1 - left.x) + (top.y2 - top.y1) * (top.y1 - left.y);
      expect(Math.abs(square)).toBeLessThan(1e-3);
      expect(right.x - left.x).toBeCloseTo(((engine + blade) / 2 + gap + 1) * scale, 6);
      expect(Math.min(left.x - left.r, right.x + right.r)).toBeGreaterThan(0);
      expect(Math.max(right.x + right.r, left.x + left.r)).toBeLessThanOrEqual(360);
    }),
  );
});
