/**
 * Two general documentation frameworks, to measure against: the same articles, with their search. They are put in for
 * the measuring, into a folder of its own; the project does not depend on them.
 */
import { mkdir, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { bodyWith, madeArticle } from './articles.ts';

export interface Peer {
  readonly name: string;
  readonly packages: Readonly<Record<string, string>>;
  /** Program and words that build it, from its folder. */
  readonly build: readonly string[];
  readonly out: string;
  /** What it keeps from one build for the next. */
  readonly caches: readonly string[];
  /** Puts the framework's own files into the folder. */
  readonly prepare: (folder: string, size: number) => Promise<void>;
}

async function writeArticles(folder: string, size: number, end: string): Promise<void> {
  await rm(folder, { recursive: true, force: true });
  await mkdir(folder, { recursive: true });
  for (let number = 0; number < size; number++) {
    const article = madeArticle(number, size);
    const head = `---\ntitle: ${article.title}\ndescription: "${article.summary}"\n---`;
    const body = bodyWith(article, (name) => `/explainers/${name}${end}`);
    await writeFile(join(folder, `${article.name}.md`), `${head}\n\n${body}`);
  }
}

async function write(folder: string, files: Readonly<Record<string, string>>): Promise<void> {
  for (const [name, text] of Object.entries(files)) {
    await mkdir(join(folder, name, '..'), { recursive: true });
    await writeFile(join(folder, name), text);
  }
}

export const peers: readonly Peer[] = [
  {
    name: 'Starlight 0.42.4',
    packages: { astro: '7.3.5', '@astrojs/starlight': '0.42.4' },
    build: ['node_modules/astro/bin/astro.mjs', 'build'],
    out: 'dist',
    caches: ['.astro', 'node_modules/.astro', 'node_modules/.vite'],
    prepare: async (folder, size) => {
      await write(folder, {
        'astro.config.mjs': `import starlight from '@astrojs/starlight';
import { defineConfig } from 'astro/config';
export default defineConfig({ integrations: [starlight({ title: 'Notes' })] });
`,
        'src/content.config.ts': `import { defineCollection } from 'astro:content';
import { docsLoader } from '@astrojs/starlight/loaders';
import { docsSchema } from '@astrojs/starlight/schema';
export const collections = { docs: defineCollection({ loader: docsLoader(), schema: docsSchema() }) };
`,
        'src/content/docs/index.md': '---\ntitle: Notes\n---\n\nNotes.\n',
      });
      await writeArticles(join(folder, 'src/content/docs/explainers'), size, '/');
    },
  },
  {
    name: 'VitePress 1.6.4',
    packages: { vitepress: '1.6.4' },
    build: ['node_modules/vitepress/bin/vitepress.js', 'build'],
    out: '.vitepress/dist',
    caches: ['.vitepress/cache', '.vitepress/.temp'],
    prepare: async (folder, size) => {
      await write(folder, {
        '.vitepress/config.mjs': `export default { title: 'Notes', themeConfig: { search: { provider: 'local' } } };\n`,
        'index.md': '# Notes\n',
      });
      await writeArticles(join(folder, 'explainers'), size, '');
    },
  },
];
