/** Everything around a calculation that lives in content: the words of its sources and cautions, its formulas as MathML, the shop. */
import { formulaMarkup } from './formula-markup.ts';
import { liveAddress } from './addresses.ts';
import type { Carry } from '../core/contract/carry.ts';
import type { Part } from '../core/contract/part.ts';
import { plateFigures, type Fill, type PlateMap } from '../core/contract/plate.ts';
import { fillsOf } from '../core/machine/index.ts';
import { topics } from '../core/registry.ts';
import { isLeftOut } from './left-out.ts';
import { onceFor } from './once.ts';
import { record, records } from './records.ts';
import { shop } from './shop.ts';

interface Named {
  readonly formulas: readonly { readonly id: string; readonly expression: string }[];
  readonly sources: readonly string[];
  readonly hazards: readonly string[];
  readonly decides?: Readonly<Record<string, readonly string[]>>;
  readonly parts?: readonly Part[];
  readonly carries?: readonly Carry[];
  readonly plate?: PlateMap;
}

/** Made once per topic: a calculator may stand in many articles. */
export const topicContext = onceFor('calculator', (name: string) => {
  const topic = topics[name];
  if (!topic) throw new Error(`There is no calculator called "${name}".`);
  return make(name, topic);
});

async function make(name: string, topic: Named) {
  const sources = await Promise.all(topic.sources.map(async (id) => [id, await shownSource(id)] as const));
  const hazards = await Promise.all(topic.hazards.map(async (id) => [id, await shownHazard(id)] as const));
  const fills = topic.plate && fillsOf(topic.plate);
  const { address, phone, currency, units, labourRate, tax } = shop;
  return {
    name,
    markup: Object.fromEntries(topic.formulas.map((f) => [f.id, formulaMarkup(f.expression)])),
    sources: Object.fromEntries(sources),
    hazards: Object.fromEntries(hazards),
    shop: { name: shop.name, address, phone, currency, units, labourRate, tax },
    /** Whether there is a page with the form in full. */
    full: !isLeftOut(`calculators/${name}`),
    address: isLeftOut(`calculators/${name}`) ? undefined : liveAddress(`/calculators/${name}/`),
    decides: topic.decides,
    parts: topic.parts,
    carries: (topic.carries ?? []).flatMap(shownCarry),
    plate: fills,
    plates: fills && (await platesFor(fills)),
  };
}

async function shownSource(id: string) {
  const { title, where, how } = await record('sources', id);
  return { title, where, how };
}

async function shownHazard(id: string) {
  const { level, title, first, say, do: steps } = await record('hazards', id);
  return { level, title, first, say, do: steps };
}

/** A way on, with what the link needs to know of the other form: its name, and the units its boxes are read in. */
function shownCarry(carry: Carry) {
  const to = topics[carry.to];
  if (!to || isLeftOut(`calculators/${carry.to}`)) return [];
  const units = to.fields.flatMap((f) =>
    f.kind === 'quantity' && f.key in carry.with ? [[f.key, f.units[0]] as const] : [],
  );
  return [{ ...carry, title: to.title, units: Object.fromEntries(units) }];
}

/** Of every machine in the shop's list, the figures this form asks for. */
async function platesFor(fills: readonly Fill[]) {
  const all = [...(await records('machines'))].map(
    ([id, { name, facts }]) => [id, { name, figures: plateFigures(fills, facts) }] as const,
  );
  return Object.fromEntries(all.filter(([, { figures }]) => Object.keys(figures).length > 0));
}
