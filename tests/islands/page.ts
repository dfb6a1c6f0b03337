/** What a page hands to an island, made from content as the build makes it, but without Astro. */
import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import type { RawInputs } from '../../src/core/contract/field.ts';
import type { Topic } from '../../src/core/contract/topic.ts';
import { formulaMarkup } from '../../src/lib/formula-markup.ts';
import type { IslandProps, ShopFacts } from '../../src/islands/kit/index.ts';

const content = new URL('../../content/knowledge/', import.meta.url);

function record<T>(folder: string, id: string): T {
  return parse(readFileSync(new URL(`${folder}/${id}.yaml`, content), 'utf8')) as T;
}

export const shop: ShopFacts = {
  name: 'Marlpit Lane Saw & Engine',
  address: ['3 Marlpit Lane', 'Anytown'],
  phone: '000 0000',
  currency: 'USD',
  units: 'metric',
  labourRate: 95,
  tax: { parts: 7, labour: 0 },
};

export function pageFor(name: string, topic: Topic, more: Partial<IslandProps> = {}): IslandProps {
  return {
    name,
    id: name,
    markup: Object.fromEntries(topic.formulas.map((f) => [f.id, formulaMarkup(f.expression)])),
    sources: Object.fromEntries(topic.sources.map((id) => [id, record<IslandProps['sources'][string]>('sources', id)])),
    hazards: Object.fromEntries(topic.hazards.map((id) => [id, record<IslandProps['hazards'][string]>('hazards', id)])),
    shop,
    address: `https://almanac.example/calculators/${name}.html`,
    ...more,
  };
}

/** Figures for every box: a case's own, else the worked example's, else the field's default. */
export function wholeFigures(topic: Topic, own: RawInputs): RawInputs {
  const defaults = topic.fields.flatMap((f) => (f.default === undefined ? [] : [[f.key, f.default] as const]));
  return { ...Object.fromEntries(defaults), ...topic.example, ...own };
}
