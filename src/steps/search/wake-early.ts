/** A page with the search box asks for the engine and what it starts from while it is being read, not after. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** As the search island writes its form. */
const box = '<form class="find" role="search"';

export const hasBox = (html: string): boolean => html.includes(box);

/** @param langs those the search was made for */
export function wakeEarly(dist: string, pages: readonly string[], langs: readonly string[]): void {
  for (const page of pages) {
    const file = join(dist, page);
    const html = readFileSync(file, 'utf8');
    const lang = /<html[^>]*\blang="([a-z]+)/.exec(html)?.[1] ?? '';
    if (!hasBox(html) || !langs.includes(lang)) continue;
    const root = /<html[^>]*\bdata-root="([^"]*)"/.exec(html)?.[1] ?? './';
    const ahead = [`start.${lang}`, `speech.${lang}`, `list.${lang}`].map(
      (name) => `<link rel="preload" as="script" href="${root}pagefind/${name}.js">`,
    );
    // Before every other script: by the time the box wakes, the engine has begun.
    const engine = `<script defer src="${root}pagefind/engine.js"></script>`;
    const first = html.search(/<script\b|<\/head>/);
    writeFileSync(file, html.slice(0, first) + ahead.join('') + engine + html.slice(first));
  }
}
