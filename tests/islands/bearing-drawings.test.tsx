/** The drawings of the fit and bearing calculators at the edges of what may be typed. */
import { parseFragment, type DefaultTreeAdapterTypes } from 'parse5';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { readInputs } from '../../src/core/contract/read-inputs.ts';
import type { RawInputs } from '../../src/core/contract/field.ts';
import { calculators } from './calculators.ts';
import { pageFor, shop, wholeFigures } from './page.ts';

type Element = DefaultTreeAdapterTypes.Element;

const extremes: Readonly<Record<string, readonly RawInputs[]>> = {
  'limits-fits': [
    { size: '0.5 mm', zone: 'H7', mate: 'g6' },
    { size: '500 mm', zone: 'a11', mate: 'H11' },
    { size: '120 mm', zone: 'js9', mate: 'ZC10' },
    { size: '25 mm', zone: 'k5', mate: '' },
  ],
  'bearing-size': [
    { bore: '1 mm', outside: '400 mm', width: '100 mm' },
    { bore: '199 mm', outside: '200 mm', width: '1 mm', allow: '2 mm' },
    { bore: '1 in', outside: '2-1/4 in', width: '5/8 in' },
    { known: 'designation', designation: '61820' },
  ],
  warming: [
    { interference: '-200 µm' },
    { interference: '1000 µm', diameter: '3 mm' },
    { interference: '0.1 µm', gap: '0 µm' },
    { room: '50 °C', cold: '40 °C', heatTo: '200 °C' },
    { part: 'ring', diameter: '500 mm', interference: '120 µm', room: '-20 °C', cold: '-80 °C' },
  ],
  'press-fit': [
    { least: '-500 µm', most: '-500 µm' },
    { least: '5000 µm', most: '5000 µm' },
    { diameter: '2 mm', hubOutside: '3000 mm', shaftBore: '0 mm', length: '1 mm' },
    { diameter: '50 mm', shaftBore: '49 mm', hubOutside: '51 mm', length: '1000 mm' },
  ],
  'running-clearance': [
    { group: 'C2', shaftLeast: '300 µm', shaftMost: '500 µm', difference: '100' },
    {
      group: 'C4',
      shaftLeast: '-300 µm',
      shaftMost: '-300 µm',
      housingLeast: '-300 µm',
      housingMost: '-300 µm',
      difference: '-50',
    },
    { bore: '200 mm', outside: '420 mm', housingOutside: '600 mm', difference: '0' },
  ],
  'bearing-life': [
    { belt: '1 N' },
    { belt: '1000000 N', speed: '30000 rpm' },
    { belt: '20 N', dirt: 'extreme' },
    { bore: '95', dirt: 'very-severe', speed: '100 rpm', viscosity: '100' },
  ],
  'bolt-torque': [
    { size: 'M24', boltClass: '12.9', state: 'plain', share: '90 %' },
    { size: 'M4', state: 'anti-seize', share: '10 %' },
    { ownFactor: '0.05' },
    { ownFactor: '0.5' },
  ],
  'bearing-fit': [
    { zone: 'H7', runningRise: '150' },
    {
      seat: 'shaft',
      size: '25 mm',
      zone: 'k5',
      basis: 'readings',
      readings: [{ across: '24.8 mm', quarter: '24.805 mm' }],
    },
  ],
};

function all(node: DefaultTreeAdapterTypes.Node): Element[] {
  const below = 'childNodes' in node ? node.childNodes.flatMap(all) : [];
  return 'tagName' in node ? [node, ...below] : below;
}
const attribute = (e: Element, name: string) => e.attrs.find((a) => a.name === name)?.value ?? '';
const textOf = (e: Element): string =>
  e.childNodes.map((n) => ('value' in n ? n.value : 'tagName' in n ? textOf(n) : '')).join('');

interface Word {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly base: number;
}

/** A little less than the faces set, so that only a real overlap is one. Letters above the base line are about nine units high. */
function wordsOf(picture: Element): Word[] {
  return all(picture)
    .filter((e) => e.tagName === 'text')
    .map((e) => {
      const [text, x] = [textOf(e), Number(attribute(e, 'x'))];
      const wide = text.length * 5.4;
      const left = { middle: x - wide / 2, end: x - wide }[attribute(e, 'text-anchor')] ?? x;
      return { text, left, right: left + wide, base: Number(attribute(e, 'y')) };
    });
}

describe.each(Object.entries(extremes))('%s', (name, presets) => {
  const calculator = calculators.find((c) => c.name === name);
  if (!calculator) throw new Error(`There is no form for ${name}.`);
  const { topic, Island } = calculator;
  const pictures = presets.flatMap((preset) =>
    (['metric', 'inch'] as const).map((units) => {
      const html = renderToString(
        <Island {...pageFor(name, topic, { preset: wholeFigures(topic, preset), shop: { ...shop, units } })} />,
      );
      return {
        preset: `${JSON.stringify(preset)} ${units}`,
        html,
        picture: all(parseFragment(html)).find((e) => e.tagName === 'svg' && attribute(e, 'role') === 'img'),
      };
    }),
  );

  it('has an answer at every one of these edges', () => {
    for (const preset of presets) {
      const read = readInputs(topic.fields, { ...topic.example, ...preset });
      expect(read.ok && topic.compute(read.inputs).ok, JSON.stringify(preset)).toBe(true);
    }
  });

  it('draws no broken figure there', () => {
    for (const { preset, html, picture } of pictures) {
      expect(html, preset).not.toMatch(/NaN|Infinity|undefined|\[object/);
      expect(picture, preset).toBeDefined();
    }
  });

  it('draws nothing inside out', () => {
    for (const { preset, picture } of pictures) {
      for (const e of picture ? all(picture).filter((p) => p.tagName === 'rect') : []) {
        expect(Number(attribute(e, 'width')), `${preset} ${attribute(e, 'class')}`).toBeGreaterThanOrEqual(0);
        expect(Number(attribute(e, 'height')), `${preset} ${attribute(e, 'class')}`).toBeGreaterThanOrEqual(0);
      }
    }
  });

  it('keeps every word inside the picture and off every other', () => {
    for (const { preset, picture } of pictures) {
      const words = picture ? wordsOf(picture) : [];
      const high = Number(picture && attribute(picture, 'height'));
      for (const w of words) {
        expect(w.left, `${preset}: ${w.text}`).toBeGreaterThan(-2);
        expect(w.right, `${preset}: ${w.text}`).toBeLessThan(362);
        expect(w.base, `${preset}: ${w.text}`).toBeLessThan(high);
      }
      const crossing = words.flatMap((a, i) =>
        words
          .slice(i + 1)
          .filter((b) => Math.abs(a.base - b.base) < 9 && Math.min(a.right, b.right) - Math.max(a.left, b.left) > 0)
          .map((b) => `${a.text} / ${b.text}`),
      );
      expect(crossing, preset).toEqual([]);
    }
  });
});
