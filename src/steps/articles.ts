/**
 * Lets Astro read articles as data, words and all, so that none is a module to be bundled; how their text becomes a
 * page is told in src/lib/article-body. Of the pictures beside them only those an article shows are handed on: what
 * is handed on is published.
 */
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { readContentFile } from './content-check/content-file.ts';
import { shownPictures } from './support/shown-pictures.ts';
import { virtualModule } from './support/virtual-module.ts';

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
        const pictures = async () => pictureModule(await shownPictures(project, setup.command === 'dev'));
        setup.updateConfig({ vite: { plugins: [virtualModule('almanac:pictures', pictures)] } });
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
