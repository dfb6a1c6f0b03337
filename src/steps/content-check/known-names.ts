/** What articles may name that is not in content/: components, figures, calculators, fixed pages. */
import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { topics } from '../../core/registry.ts';
import { kinds } from '../../schemas/kinds.ts';
import { namedInArticles } from '../support/browser-sources.ts';
import { listFiles } from '../support/files.ts';
import type { Known } from './library.ts';

export async function knownNames(projectFolder: string): Promise<Known> {
  const names = async (folder: string) =>
    existsSync(join(projectFolder, folder))
      ? (await listFiles(join(projectFolder, folder)))
          .filter((f) => f.endsWith('.astro'))
          .map((f) => f.slice(0, -'.astro'.length))
      : [];
  const pages = await names(namedInArticles.pages);
  return {
    components: new Set([...(await listedComponents(projectFolder)), ...(await names(namedInArticles.tables))]),
    figures: new Set(await names(namedInArticles.figures)),
    topics: new Set(Object.keys(topics)),
    addresses: new Set([
      ...pages.filter((p) => !p.includes('[')).map(addressOf),
      ...Object.entries(kinds).flatMap(([folder, kind]) => (kind.page ? [`/${folder}/`] : [])),
    ]),
    patterns: pages.filter((p) => p.includes('[') && !madeFromArticles.test(p)).map(patternOf),
  };
}

/** Pages whose addresses the check derives from content/ itself. */
const madeFromArticles = /^(?:\[folder\]|es\/guides|faults)\//;

/** The names in the object that src/components/mdx-components.ts exports. */
async function listedComponents(projectFolder: string): Promise<string[]> {
  const text = await readFile(join(projectFolder, namedInArticles.components), 'utf8');
  const list = /mdxComponents\s*=\s*\{([^}]*)\}/.exec(text)?.[1] ?? '';
  return [...list.matchAll(/(?<![.\w])([A-Z]\w*)\b(?!\s*:)/g)].map((m) => m[1] ?? '');
}

function addressOf(page: string): string {
  return `/${page}/`.replace(/\/index\/$/, '/').replace(/^\/\/$/, '/');
}

function patternOf(page: string): RegExp {
  const parts = page
    .replace(/\/index$/, '')
    .split('/')
    .map((part) => (part.startsWith('[') ? '[^/]+' : part));
  return new RegExp(`^/${parts.join('/')}/$`);
}
