/** What stands on the page before any script runs: a whole worked example that also prints. */
import { parseFragment, type DefaultTreeAdapterTypes } from 'parse5';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { readInputs } from '../../src/core/contract/read-inputs.ts';
import { examplesFor } from '../cases/examples.ts';
import { calculators } from './calculators.ts';
import { pageFor, shop } from './page.ts';

type Element = DefaultTreeAdapterTypes.Element;

function elements(html: string): Element[] {
  const all: Element[] = [];
  const walk = (node: DefaultTreeAdapterTypes.Node): void => {
    if ('tagName' in node) all.push(node);
    if ('childNodes' in node) node.childNodes.forEach(walk);
  };
  walk(parseFragment(html));
  return all;
}
const attribute = (e: Element, name: string) => e.attrs.find((a) => a.name === name)?.value;
const textOf = (e: Element): string =>
  e.childNodes.map((n) => ('value' in n ? n.value : 'tagName' in n ? textOf(n) : '')).join('');

it('there is a form for the four first calculators', () => {
  expect(calculators.map((c) => c.name)).toEqual(
    expect.arrayContaining(['blade-speed', 'belt-tension', 'bearing-fit', 'repair-worth']),
  );
});

describe.each(calculators.map((c) => [c.name, c] as const))('%s', (name, { topic, Island }) => {
  const html = renderToString(<Island {...pageFor(name, topic)} />);
  const all = elements(html);

  it('shows no broken figure', () => {
    expect(html).not.toMatch(/NaN|Infinity|undefined|\[object/);
  });

  it('shows every value of the worked example', () => {
    const read = readInputs(topic.fields, topic.example);
    const result = read.ok ? topic.compute(read.inputs) : undefined;
    if (!result?.ok) throw new Error('The worked example does not work out.');
    const shown = new Set(all.map((e) => attribute(e, 'data-value')).filter(Boolean));
    expect(result.values.map((v) => v.key).filter((key) => !shown.has(key))).toEqual([]);
    expect(all.filter((e) => attribute(e, 'data-formula')).length).toBeGreaterThan(0);
  });

  it('sets every formula of the working', () => {
    const steps = all.filter((e) => attribute(e, 'data-formula'));
    const within = (e: Element): Element[] => e.childNodes.flatMap((n) => ('tagName' in n ? [n, ...within(n)] : []));
    expect(
      steps.filter((s) => !within(s).some((e) => e.tagName === 'math')).map((s) => attribute(s, 'data-formula')),
    ).toEqual([]);
  });

  it('says that it is a worked example and keeps its boxes shut until they work', () => {
    expect(html).toContain('Worked example');
    const form = all.find((e) => attribute(e, 'class') === 'calc-switchable');
    expect(form && attribute(form, 'disabled')).toBe('');
    // A browser's own memory of boxes, brought back over the form's, would not be what the answer rests on.
    expect(all.filter((e) => e.tagName === 'form').map((e) => attribute(e, 'autocomplete'))).toEqual(['off']);
  });

  it('gives every box a label of its own', () => {
    const labels = new Map(
      all.filter((e) => e.tagName === 'label').map((e) => [attribute(e, 'for'), textOf(e).trim()]),
    );
    const boxes = all.filter((e) => e.tagName === 'input' || e.tagName === 'select');
    expect(boxes.length).toBeGreaterThan(2);
    expect(boxes.filter((b) => !labels.get(attribute(b, 'id'))).map((b) => attribute(b, 'id'))).toEqual([]);
  });

  it('points to descriptions that exist, and uses no id twice', () => {
    const ids = all.map((e) => attribute(e, 'id')).filter((id): id is string => id !== undefined);
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
    const wanted = all.flatMap((e) =>
      [attribute(e, 'aria-describedby'), attribute(e, 'aria-labelledby')].flatMap((v) => v?.split(' ') ?? []),
    );
    expect(wanted.filter((id) => !ids.includes(id))).toEqual([]);
  });

  it('writes no style into the page', () => {
    expect(all.filter((e) => attribute(e, 'style') !== undefined).map((e) => e.tagName)).toEqual([]);
  });

  it('gives its picture a title and a description', () => {
    for (const picture of all.filter((e) => e.tagName === 'svg' && attribute(e, 'role') === 'img')) {
      const named = attribute(picture, 'aria-labelledby')?.split(' ') ?? [];
      expect(named.map((id) => textOf(all.find((e) => attribute(e, 'id') === id) as Element).length > 10)).toEqual([
        true,
        true,
      ]);
    }
  });

  it('draws and shows every published case', () => {
    for (const preset of examplesFor(name, topic.example)) {
      const shown = renderToString(<Island {...pageFor(name, topic, { preset })} />);
      expect(shown, JSON.stringify(preset)).not.toMatch(/NaN|Infinity|undefined|\[object/);
    }
  });

  it('names only sources and cautions the topic lists', () => {
    for (const raw of examplesFor(name, topic.example)) {
      const read = readInputs(topic.fields, raw);
      const result = read.ok ? topic.compute(read.inputs) : undefined;
      if (!result?.ok) continue;
      const sources = [...result.working.map((s) => s.source), ...result.values.flatMap((v) => v.source ?? [])];
      expect(sources.filter((s) => !topic.sources.includes(s))).toEqual([]);
      expect(result.cautions.map((c) => c.hazard).filter((h) => !topic.hazards.includes(h))).toEqual([]);
    }
  });

  it('works in inches too', () => {
    const inch = renderToString(<Island {...pageFor(name, topic, { shop: { ...shop, units: 'inch' } })} />);
    expect(inch).not.toMatch(/NaN|Infinity|undefined|\[object/);
  });

  it('has a short form without working or seldom-needed boxes', () => {
    const short = renderToString(<Island {...pageFor(name, topic, { compact: true })} />);
    expect(short).not.toContain('calc-working');
    expect(short).not.toContain('calc-more');
    expect(short).toContain(`/calculators/${name}/`);
  });
});
