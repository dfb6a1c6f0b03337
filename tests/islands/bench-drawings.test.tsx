/** Drawings of the bench calculators at the ends of what the boxes allow: whole, finite and inside the picture. */
import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import type { RawInputs } from '../../src/core/contract/field.ts';
import { layGroove, some } from '../../src/islands/SplitPulley/groove.ts';
import { calculators } from './calculators.ts';
import { pageFor, shop, wholeFigures } from './page.ts';

const extremes: Readonly<Record<string, readonly RawInputs[]>> = {
  'split-pulley': [
    {
      gapStart: '60 mm',
      angle: '15°',
      closedDiameter: '600 mm',
      centre: '1500 mm',
      drivePulley: '600 mm',
      beltLength: '',
      beltWidthNow: '',
    },
    { gapStart: '0.05 mm', thread: '0.3 mm', step: 'eighth' },
    { beltWidth: '60 mm', beltWidthNow: '60 mm', closedDiameter: '300 mm', blade: '80 mm', gapPinched: '20 mm' },
    {
      closedDiameter: '20 mm',
      beltWidth: '4 mm',
      beltWidthNow: '3 mm',
      gapStart: '1 mm',
      rim: '800 mm',
      gapPinched: '0 mm',
      blade: '1000 mm',
    },
  ],
  'clutch-speed': [
    {
      known: 'parts',
      idle: '8000 rpm',
      running: '20000 rpm',
      spring: '20000 N',
      power: '100 kW',
      shoes: 1,
      gap: '15.9 mm',
    },
    { known: 'parts', shoes: 8, radius: '2 mm', gap: '0 mm', drum: '1000 mm' },
    { known: 'speed', engages: '300 rpm', idle: '300 rpm', weak: '100 %' },
    { known: 'speed', engages: '15000 rpm', idle: '8000 rpm' },
    { known: 'parts', shoes: 2, radius: '499 mm', drum: '1000 mm', gap: '0.5 mm', weak: '0 %', spring: '1 N' },
  ],
  'blade-rundown': [
    {
      diameter: '2000 mm',
      bore: '600 mm',
      flange: '799 mm',
      rotation: '1400 rpm',
      thickness: '20 mm',
      time: '600 s',
      runOut: '20 mm',
    },
    { diameter: '51 mm', bore: '49 mm', time: '0.2 s', runOut: '0 mm', flange: '50 mm' },
    { runOut: '', speck: '5 mm', flange: '26 mm' },
    { known: 'torque', torque: '0.001 N*m', runOutLimit: '0.01 mm', rotation: '8000 rpm' },
  ],
  'fuel-mix': [
    { known: 'mixed', mixedAt: 1000, ratio: 10, can: '1000 L' },
    { known: 'mixed', mixedAt: 5, ratio: 200 },
    { known: 'mixed', mixedAt: 50, ratio: 50 },
    { known: 'oil', oil: '100000 mL', ratio: 200 },
    { fuel: '1 mL' },
  ],
  'compression-check': [
    {
      reading: '60 bar',
      healthy: '2 bar',
      first: '0 bar',
      wet: true,
      swept: '10 cm3',
      oil: '0.05 mL',
      oiled: '200 bar',
      height: '6000 m',
    },
    { reading: '0 bar', healthy: '60 bar', first: '', wet: true, swept: '70 cm3', oil: '0.3 mL', oiled: '1 bar' },
  ],
  'blade-speed': [
    { head: 'twin', diameter: '230 mm', reach: '10 mm', flange: '60 mm' },
    { head: 'twin', diameter: '230 mm', reach: '2000 mm', flange: '220 mm' },
    { head: 'twin', diameter: '2000 mm', reach: '2000 mm', flange: '0 mm' },
  ],
};

/** Numbers that place something, of one picture. */
function places(svg: string): number[] {
  return [...svg.matchAll(/ (?:x|y|cx|cy)="([^"]*)"/g)].map((m) => Number(m[1]));
}

describe.each(Object.entries(extremes))('%s', (name, presets) => {
  const found = calculators.find((c) => c.name === name);
  it.each(
    presets.flatMap((preset) => [
      { preset, units: 'metric' as const },
      { preset, units: 'inch' as const },
    ]),
  )('is drawn whole for $preset in $units', ({ preset, units }) => {
    if (!found) throw new Error(`There is no form for ${name}.`);
    const html = renderToString(
      <found.Island
        {...pageFor(name, found.topic, { preset: wholeFigures(found.topic, preset), shop: { ...shop, units } })}
      />,
    );
    expect(html).not.toMatch(/NaN|Infinity|undefined|\[object/);
    const svg = /<svg role="img".*?<\/svg>/s.exec(html)?.[0] ?? '';
    const [, width, height] = /viewBox="0 0 (\d+) (\d+)"/.exec(svg) ?? [];
    expect(Number(width)).toBe(360);
    for (const at of places(svg)) {
      expect(at).toBeGreaterThanOrEqual(-1);
      expect(at).toBeLessThanOrEqual(Math.max(Number(width), Number(height)));
    }
    // A negative size is an error of the picture that browsers only drop in silence.
    expect(svg).not.toMatch(/ (?:width|height|r)="-/);
  });
});

describe('the groove of a split pulley', () => {
  const states = [
    { gap: 0.005, radius: 0.05 - 0.005 / (2 * Math.tan((19 * Math.PI) / 180)) },
    { gap: 0, radius: 0.05 },
  ];
  const groove = layGroove({
    closed: 0.05,
    angle: (38 * Math.PI) / 180,
    nominal: 0.013,
    belt: 0.013,
    rim: undefined,
    states,
  });
  const xs = (path: string) =>
    [...path.matchAll(/([\d.]+) ([\d.]+)/g)].map((m) => [Number(m[1]), Number(m[2])] as const);

  it('holds the belt flank on flank at every gap', () => {
    for (const s of states) {
      const half = groove.halfBelt;
      const y = groove.y(s.radius);
      // Where the right flank crosses the height of the pitch line.
      const [, [x1, y1] = [0, 0], [x2, y2] = [0, 0]] = xs(groove.flanks(s.gap).split('M')[2] ?? '');
      expect(x1 + ((y - y1) * (x2 - x1)) / (y2 - y1) - 112).toBeCloseTo(half, 1);
    }
  });

  it('draws first and last state when there are too many', () => {
    const many = Array.from({ length: 25 }, (_, i) => i);
    expect(some(many, 9)).toHaveLength(9);
    expect([some(many, 9)[0], some(many, 9).at(-1)]).toEqual([0, 24]);
    expect(some([1, 2, 3], 9)).toEqual([1, 2, 3]);
  });
});
