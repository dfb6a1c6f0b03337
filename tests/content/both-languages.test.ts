/** What a customer reads in English and in Spanish is the same page: parts, cautions, steps, figures, pictures, sources. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { parse } from 'yaml';

const folder = new URL('../../content/knowledge/', import.meta.url);
const read = (path: string) => readFileSync(new URL(path, folder), 'utf8');
const names = (of: string, ending: string) =>
  readdirSync(new URL(of, folder))
    .filter((f) => f.endsWith(ending))
    .map((f) => f.slice(0, -ending.length));

type Front = Readonly<Record<string, unknown>>;

const textOf = (value: unknown) => (typeof value === 'string' ? value : '');

function article(path: string): { front: Front; body: string } {
  const [, front = '', body = ''] = /^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(read(path)) ?? [];
  return { front: parse(front) as Front, body };
}

/** Figures as written, in any order: both languages write 0.5 and neither a comma for thousands in the same place. */
const figures = (text: string) =>
  (
    text
      .replace(/<[^>]*>|\]\([^)]*\)|&#\d+;/g, ' ')
      .replace(/^\d+\.\s/gm, '')
      .match(/\d[\d.,/]*\d|\d/g) ?? []
  )
    .map((n) => n.replaceAll(',', ''))
    .sort();

/** The rows of countries that publish their limit in Spanish stand in the Spanish guide alone. */
const onlySpanish: Readonly<Record<string, { figures: string[]; rows: number; sources: string[] }>> = {
  'keeping-dust-down': {
    figures: ['0.05', '0.08', '0.025', '2022'],
    rows: 3,
    sources: ['rd-665-1997', 'ds-594-chile', 'limits-from-memory'],
  },
};

const count = (text: string, what: RegExp) => (text.match(what) ?? []).length;

const shapeOf = (body: string) => ({
  headings: [...body.matchAll(/^(#+) /gm)].map((m) => m[1]?.length),
  cautions: [...body.matchAll(/<Hazard id="([^"]*)"/g)].map((m) => m[1]),
  pictures: [...body.matchAll(/<Figure name="([^"]*)"/g)].map((m) => m[1]),
  lists: [...body.matchAll(/<(Checks|MixByCan)[^>]*>/g)].map((m) => m[0]),
  steps: count(body, /^\d+\. /gm),
  bullets: count(body, /^ *- /gm),
  words: [...body.matchAll(/<Term id="([^"]*)"/g)].map((m) => m[1]),
});

test.each(names('guides', '.mdx'))('the guide %s', (name) => {
  const [en, es] = [article(`guides/${name}.mdx`), article(`guides/es/${name}.mdx`)];
  const more = onlySpanish[name] ?? { figures: [], rows: 0, sources: [] };
  expect(shapeOf(es.body)).toEqual(shapeOf(en.body));
  expect(count(es.body, /^\|/gm)).toBe(count(en.body, /^\|/gm) + more.rows);
  expect(figures(es.body)).toEqual([...figures(en.body), ...more.figures].sort());
  for (const field of ['hazards', 'kinds', 'order', 'reader']) expect(es.front[field], field).toEqual(en.front[field]);
  const sources = (of: Front) => [...(of['sources'] as string[])].sort();
  expect(sources(es.front)).toEqual([...sources(en.front), ...more.sources].sort());
  expect(figures(textOf(es.front['time']))).toEqual(figures(textOf(en.front['time'])));
  expect((es.front['tools'] as string[] | undefined)?.length).toBe((en.front['tools'] as string[] | undefined)?.length);
});

interface Said {
  readonly look: string[];
  readonly leave: string[];
  readonly bring: string[];
}

test.each(names('trouble', '.yaml'))('the complaint %s', (name) => {
  const { es, ...en } = parse(read(`trouble/${name}.yaml`)) as Said & { es: Said };
  for (const list of ['look', 'leave', 'bring'] as const) {
    expect(es[list].length, list).toBe(en[list].length);
    expect(
      es[list].map((line) => line.startsWith('**')),
      list,
    ).toEqual(en[list].map((line) => line.startsWith('**')));
    expect(figures(es[list].join(' ')), list).toEqual(figures(en[list].join(' ')));
  }
  expect(en.leave.filter((line) => !line.startsWith('Do not '))).toEqual([]);
  expect(es.leave.filter((line) => !line.startsWith('No '))).toEqual([]);
});

interface Check {
  readonly say: string;
  readonly more: string;
}

test.each(names('checks', '.yaml'))('the checks %s', (name) => {
  const { groups } = parse(read(`checks/${name}.yaml`)) as { groups: { checks: (Check & { es: Check })[] }[] };
  for (const { es, ...en } of groups.flatMap((g) => g.checks))
    expect(figures(`${es.say} ${es.more}`), en.say).toEqual(figures(`${en.say} ${en.more}`));
});

test.each(names('hazards', '.yaml'))('the caution %s', (name) => {
  const { es, ...en } = parse(read(`hazards/${name}.yaml`)) as {
    do: string[];
    customer?: string[];
    say: string;
    es: { do: string[]; customer?: string[]; say: string };
  };
  expect(es.do.length).toBe(en.do.length);
  expect(es.customer?.length).toBe(en.customer?.length);
  expect(figures([es.say, ...es.do].join(' '))).toEqual(figures([en.say, ...en.do].join(' ')));
});
