/**
 * Lets Astro read articles as data, words and all, so that none is a module to be bundled; how their text becomes a
 * page is told in src/lib/article-body. Of the pictures beside them only those an article shows are handed on: what
 * is handed on is published.
 */
import { readFile } from 'node:fs/promises';
import { join, posix } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { places } from '../schemas/places.ts';
import { readContentFile } from './content-check/content-file.ts';
import { isDraft } from './support/drafts.ts';
import { listFiles } from './support/files.ts';

const asked = 'almanac:pictures';
const resolved = `\0${asked}`;

/** What Astro calls to read a kind of file; its own MDX integration uses the same door. */
interface EntryType {
  readonly extensions: readonly string[];
  readonly getEntryInfo: (file: { readonly fileUrl: URL; readonly contents: string }) => unknown;
}

export function articlesAsData(): AstroIntegration {
  return {
    name: 'almanac-articles',
    hooks: {
      'astro:config:setup': (setup) => {
        const project = fileURLToPath(setup.config.root);
        const { addContentEntryType } = setup as unknown as { addContentEntryType: (type: EntryType) => void };
        addContentEntryType({
          extensions: ['.mdx'],
          getEntryInfo: ({ fileUrl, contents }) => entryOf(fileUrl, contents),
        });
        setup.updateConfig({
          vite: {
            plugins: [
              {
                name: 'almanac-pictures',
                resolveId: (id: string) => (id === asked ? resolved : undefined),
                load: async (id: string) =>
                  id === resolved ? pictureModule(await shownPictures(project, setup.command === 'dev')) : undefined,
              },
            ],
          },
        });
      },
    },
  };
}

function entryOf(fileUrl: URL, contents: string) {
  const { yaml, body } = readContentFile(fileURLToPath(fileUrl), new TextEncoder().encode(contents));
  return { data: (yaml.data ?? {}) as Record<string, unknown>, body: body.trim(), slug: '', rawData: '' };
}

function pictureModule(files: readonly string[]): string {
  const imports = files.map((file, i) => `import p${i} from ${JSON.stringify(`/${file}`)};`);
  const rows = files.map((file, i) => `${JSON.stringify(file)}: p${i}`);
  return `${imports.join('\n')}\nexport const pictures = { ${rows.join(', ')} };`;
}

/** ![what](./name.jpg), or the address of one that is named elsewhere in the text. */
const named = /(?:\]\(|\]:)\s*<?(\.{1,2}\/[^\s)>]+\.(?:jpg|png|webp))/g;

/** From the project's folder, in the order of their names. */
export async function shownPictures(project: string, withDrafts: boolean): Promise<string[]> {
  const shown = new Set<string>();
  const there = new Set<string>();
  for (const place of places)
    for (const name of await listFiles(join(project, place)).catch(() => [])) {
      const file = `${place}/${name}`;
      if (/\.(?:jpg|png|webp)$/.test(name)) there.add(file);
      if (!name.endsWith('.mdx')) continue;
      const text = await readFile(join(project, file), 'utf8');
      if (!withDrafts && isDraft(text)) continue;
      for (const [, src = ''] of text.matchAll(named)) shown.add(posix.join(posix.dirname(file), decodeURI(src)));
    }
  return [...shown].filter((file) => there.has(file)).sort();
}
