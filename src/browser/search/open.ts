/**
 * How a page gets the search engine: a script tag, because a page opened from disk may not
 * fetch or import. A built page with a search box has it in its head. Every later call gives the same engine.
 */
import type { SearchEngine } from './contract.ts';

let opened: Promise<SearchEngine> | undefined;

export function openSearch(): Promise<SearchEngine> {
  if (globalThis.almanacSearch) return Promise.resolve(globalThis.almanacSearch);
  opened ??= addScript().catch((reason: unknown) => {
    opened = undefined;
    throw reason;
  });
  return opened;
}

function addScript(): Promise<SearchEngine> {
  const root = new URL(document.documentElement.dataset['root'] ?? './', location.href);
  return new Promise((done, failed) => {
    const tag = document.createElement('script');
    tag.src = new URL('pagefind/engine.js', root).href;
    tag.onload = () =>
      globalThis.almanacSearch ? done(globalThis.almanacSearch) : failed(new Error('The search engine did not start.'));
    tag.onerror = () => {
      tag.remove();
      failed(new Error('The search engine could not be loaded.'));
    };
    document.head.append(tag);
  });
}
