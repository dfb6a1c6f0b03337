/** The drawing of a machine and the list beside it say the same, and each part leads to pages about that machine. */
import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { drawings } from '../../src/components/saw/places.ts';

const content = new URL('../../content/knowledge/', import.meta.url);
interface Part {
  readonly id: string;
  readonly see: string;
  readonly pages: readonly string[];
  readonly es: { readonly see: string };
}
const partsOf = (kind: string) =>
  (parse(readFileSync(new URL(`parts/${kind}.yaml`, content), 'utf8')) as { parts: readonly Part[] }).parts;
const fileOf = (page: string) =>
  ['mdx', 'yaml'].map((e) => new URL(`${page}.${e}`, content)).find((f) => existsSync(f));
const kindsOf = (page: string): readonly string[] => {
  const file = fileOf(page);
  const kinds = file && /^kinds: \[(.*)\]$/m.exec(readFileSync(file, 'utf8'))?.[1];
  return kinds ? kinds.split(', ') : [];
};

it('all four kinds of saw are drawn', () => {
  expect(Object.keys(drawings).sort()).toEqual(['cut-off-saw', 'floor-saw', 'ring-saw', 'twin-blade-saw']);
});

describe.each(Object.entries(drawings))('%s', (kind, places) => {
  const parts = partsOf(kind);

  it('numbers the parts of the drawing in the order of the list', () => {
    expect(parts.map((p) => p.id)).toEqual(Object.keys(places.parts));
  });
  it.each(parts.map((p) => [p.id, p] as const))('%s leads to pages that exist, in both languages', (_, part) => {
    const pages = [part.see, part.es.see].map((see) => see.replace(/#.*/, '').replace(/^\/|\/$/g, ''));
    for (const page of [...pages, ...part.pages]) {
      const [lang, folder, name] = page.split('/');
      const path = lang === 'es' ? (folder === 'guides' ? `guides/es/${name}` : `${folder}/${name}`) : page;
      expect(fileOf(path), page).toBeDefined();
    }
  });
  it.each(parts.map((p) => [p.id, p] as const))('%s leads to jobs and complaints of this kind of saw', (_, part) => {
    const bench = part.pages.filter((page) => /^(?:jobs|faults)\//.test(page) && kindsOf(page).length > 0);
    expect(bench.filter((page) => !kindsOf(page).includes(kind))).toEqual([]);
  });
  it('keeps its circles apart', () => {
    const circles = Object.values(places.parts).map((p) => p.circle);
    const near = circles.flatMap(([x, y], k) =>
      circles.slice(k + 1).filter(([a, b]) => Math.hypot(a - x, b - y) < 2 * 25 + 16),
    );
    expect(near).toEqual([]);
  });
});
