/** What articles may name that is not in content/: components, figures, calculators, fixed pages. */
import { existsSync } from 'node:fs';
import { readdir, readFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { addressIn, first, languages, type Lang } from '../../words/lang.ts';
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
    components: new Map([
      ...(await listedComponents(projectFolder)),
      ...(await attributesOf(join(projectFolder, namedInArticles.tables), await names(namedInArticles.tables))),
    ]),
    figures: new Set(await names(namedInArticles.figures)),
    topics: new Set(await foldersIn(join(projectFolder, namedInArticles.topics))),
    addresses: new Set([
      ...pages
        .map(insideLanguages)
        .flatMap(({ page, langs }) =>
          page.includes('[') ? [] : langs.map((lang) => addressIn(lang, addressOf(page))),
        ),
      // The shop's own pages have no list: the foot names each.
      ...Object.entries(kinds).flatMap(([folder, kind]) => (kind.page && folder !== 'pages' ? [`/${folder}/`] : [])),
    ]),
    patterns: pages
      .map(insideLanguages)
      .flatMap(({ page, langs }) =>
        page.includes('[') && !madeFromArticles.test(page)
          ? langs.map((lang) => patternOf(addressIn(lang, `/${page}`)))
          : [],
      ),
  };
}

/** A calculator is a folder; a test holds that each is in the registry, which takes long to load. */
async function foldersIn(folder: string): Promise<string[]> {
  const entries = existsSync(folder) ? await readdir(folder, { withFileTypes: true }) : [];
  return entries.filter((entry) => entry.isDirectory()).map((entry) => entry.name);
}

/** Pages whose addresses the check derives from content/ itself. */
const madeFromArticles = /^(?:\[folder\]|guides|faults|trouble|pages)\//;

/** The components in the object that src/components/mdx-components.ts exports, each from the file it is imported from. */
async function listedComponents(projectFolder: string): Promise<[string, ReadonlySet<string>][]> {
  const text = await readFile(join(projectFolder, namedInArticles.components), 'utf8');
  const list = /mdxComponents\s*=\s*\{([^}]*)\}/.exec(text)?.[1] ?? '';
  // "table: WideTable" is what Markdown itself becomes; no article names it.
  const named = list.replace(/\w+\s*:\s*\w+/g, '');
  const names = [...named.matchAll(/(?<![.\w])([A-Z]\w*)\b/g)].map((m) => m[1] ?? '');
  const folder = dirname(join(projectFolder, namedInArticles.components));
  const from = (name: string) => new RegExp(`import ${name} from '\\./(.*/)?[^/]*'`).exec(text)?.[1] ?? '';
  const lists = await Promise.all(names.map((name) => attributesOf(join(folder, from(name)), [name])));
  return lists.flat();
}

/** What a component takes: the names in its `interface Props`. */
async function attributesOf(folder: string, names: readonly string[]): Promise<[string, ReadonlySet<string>][]> {
  return Promise.all(
    names.map(async (name): Promise<[string, ReadonlySet<string>]> => {
      const file = join(folder, `${name}.astro`);
      const text = existsSync(file) ? await readFile(file, 'utf8') : '';
      const props = /interface Props \{([\s\S]*?)\n\}/.exec(text)?.[1] ?? '';
      return [name, new Set([...props.matchAll(/^ {2}(\w+)\??:/gm)].map((m) => m[1] ?? ''))];
    }),
  );
}

/** A page of src/pages/[...lang] stands in every language, in the folder of each. */
function insideLanguages(page: string): { page: string; langs: readonly Lang[] } {
  const inside = /^\[\.\.\.lang\]\/(.*)$/.exec(page)?.[1];
  return inside === undefined ? { page, langs: [first] } : { page: inside, langs: languages };
}

function addressOf(page: string): string {
  return `/${page}/`.replace(/\/index\/$/, '/');
}

function patternOf(page: string): RegExp {
  const parts = page
    .replace(/\/index$/, '')
    .split('/')
    .map((part) => (part.startsWith('[') ? '[^/]+' : part));
  return new RegExp(`^${parts.join('/')}/$`);
}
