/** Everything around a calculation that lives in content: the words of its sources and cautions, its formulas as MathML, the shop. */
import { formulaMarkup } from './formula-markup.ts';
import { liveAddress } from './addresses.ts';
import { record } from './records.ts';
import { shop } from './shop.ts';

interface Named {
  readonly formulas: readonly { readonly id: string; readonly expression: string }[];
  readonly sources: readonly string[];
  readonly hazards: readonly string[];
  readonly decides?: Readonly<Record<string, readonly string[]>>;
}

const made = new Map<string, Promise<Awaited<ReturnType<typeof make>>>>();

/** Made once per topic: a calculator may stand in many articles. */
export function topicContext(name: string, topic: Named): ReturnType<typeof make> {
  const known = made.get(name) ?? make(name, topic);
  made.set(name, known);
  return known;
}

async function make(name: string, topic: Named) {
  const sources = await Promise.all(topic.sources.map(async (id) => [id, await shownSource(id)] as const));
  const hazards = await Promise.all(topic.hazards.map(async (id) => [id, await shownHazard(id)] as const));
  const { address, phone, currency, units, labourRate, tax } = shop;
  return {
    name,
    markup: Object.fromEntries(topic.formulas.map((f) => [f.id, formulaMarkup(f.expression)])),
    sources: Object.fromEntries(sources),
    hazards: Object.fromEntries(hazards),
    shop: { name: shop.name, address, phone, currency, units, labourRate, tax },
    address: liveAddress(`/calculators/${name}/`),
    decides: topic.decides,
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
