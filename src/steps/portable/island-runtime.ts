/**
 * Astro puts its island runtime inline on every page. Here it is recognised, so that it can be
 * bundled with the islands instead. This file is the only one that leans on how Astro writes
 * that snippet; when Astro changes it, the build stops here and says so.
 */
import type { Page, PageElement } from './parse-page.ts';

export interface Runtime {
  /** The custom element, exactly one, with its import() turned into a look-up. */
  readonly element: string;
  /** When an island wakes: load, visible, idle, media, only. */
  readonly directives: readonly string[];
  readonly scripts: readonly PageElement[];
}

/** Name of the look-up the bundle defines in place of import(). */
export const lookUp = '__island';

export function isElementSnippet(script: PageElement): boolean {
  return isInline(script) && script.text.includes('customElements.define("astro-island"');
}

export function isDirectiveSnippet(script: PageElement): boolean {
  return isInline(script) && /\(self\.Astro\|\|\(self\.Astro=\{\}\)\)\.\w+=/.test(script.text);
}

export function isInline(script: PageElement): boolean {
  const type = script.attributes['type'] ?? '';
  return (
    script.tag === 'script' &&
    script.attributes['src'] === undefined &&
    ['', 'module', 'text/javascript'].includes(type)
  );
}

export function readRuntime(page: Page): Runtime {
  const elements = page.elements.filter(isElementSnippet);
  const directives = page.elements.filter(isDirectiveSnippet);
  const [only] = elements;
  if (!only || elements.length !== 1)
    throw new Error(
      `${page.file} has islands but ${elements.length} copies of Astro's island snippet; src/steps/portable/island-runtime.ts no longer fits this Astro.`,
    );
  if (directives.length === 0)
    throw new Error(
      `${page.file} has islands but no client directive was recognised; src/steps/portable/island-runtime.ts no longer fits this Astro.`,
    );
  const element = only.text.replaceAll(/\bimport\(/g, `${lookUp}(`);
  if (element === only.text)
    throw new Error(
      "Astro's island snippet no longer loads islands with import(); src/steps/portable/island-runtime.ts must be looked at.",
    );
  return { element, directives: directives.map((d) => d.text).sort(), scripts: [...elements, ...directives] };
}
