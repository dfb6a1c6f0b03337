/**
 * In a build the program holds no word of the content: what pages ask for is looked up in what is handed over when they
 * are made. While one writes, Astro's own way stays, which follows every change.
 */
import { fileURLToPath } from 'node:url';
import type { Plugin } from 'vite';
import { virtualModule } from '../support/virtual-module.ts';
import { slot } from './site-data.ts';

/** What the program asks for -> what it gets; `site` is what is handed over. */
const given: Readonly<Record<string, string>> = {
  'almanac:edition': 'export const edition = site.edition;',
  'almanac:samples': 'export default site.samples;',
  'almanac:reads': 'export const reads = site.reads;',
};

/** Astro takes its own name for the content before any plugin is asked, so this one goes by way of a file. */
export const givenStore = {
  find: 'astro:data-layer-content',
  replacement: fileURLToPath(new URL('./given-store.mjs', import.meta.url)),
};

/** While one writes, nothing is kept, and so what pages read is not noted. */
export const nobodyListens = virtualModule('almanac:reads', () => 'export const reads = undefined;');

export function givenAtRunTime(): Plugin {
  return {
    name: 'almanac-given',
    enforce: 'pre',
    resolveId: (id: string) => (Object.hasOwn(given, id) ? `\0given:${id}` : undefined),
    load: (id: string) => {
      const code = given[id.replace(/^\0given:/, '')];
      return id.startsWith('\0given:') && code !== undefined ? `const site = globalThis.${slot};\n${code}` : undefined;
    },
  };
}
