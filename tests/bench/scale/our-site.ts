/** The demo shop with made-up articles beside its own, in a folder where nothing else is touched. */
import { cp, mkdir, readdir, rm, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { projectFolder } from '../../../src/commands/support/command.ts';
import { articleName, bodyWith, madeArticle } from './articles.ts';

/** Folders beside the packages in which a build leaves what the next one can use. */
const kept = new Set(['.cache', '.astro', '.vite', '.cache-tsbuildinfo', '.test-sites']);

const articlesFolder = 'content/knowledge/explainers';
const parts = ['src', 'content', 'public', 'astro.config.mjs', 'package.json', 'package-lock.json', 'tsconfig.json'];

/** From the folder of the site. */
export const articleFile = (number: number): string => `${articlesFolder}/${articleName(number)}.mdx`;

export async function prepareOurs(folder: string, size: number, project = projectFolder): Promise<void> {
  await rm(folder, { recursive: true, force: true });
  await mkdir(folder, { recursive: true });
  for (const part of parts) await cp(join(project, part), join(folder, part), { recursive: true });
  // The packages, and nothing that an earlier build has kept beside them.
  await mkdir(join(folder, 'node_modules'));
  for (const name of await readdir(join(project, 'node_modules')))
    if (!kept.has(name))
      await symlink(join(project, 'node_modules', name), join(folder, 'node_modules', name), 'junction');
  for (let number = 0; number < size; number++) {
    const article = madeArticle(number, size);
    const head = [
      '---',
      `title: ${article.title}`,
      `summary: "${article.summary}"`,
      'reader: mechanic',
      'reviewed: 2026-11-25',
      'sources: [common-practice]',
      '---',
    ].join('\n');
    await writeFile(
      join(folder, articleFile(number)),
      `${head}\n\n${bodyWith(article, (name) => `/explainers/${name}/`)}`,
    );
  }
}
