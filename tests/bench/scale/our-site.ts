/** The demo shop with made-up articles beside its own, in a folder where nothing else is touched. */
import { cp, mkdir, rm, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { projectFolder } from '../../../src/commands/support/command.ts';
import { bodyWith, madeArticle } from './articles.ts';

const parts = ['src', 'content', 'public', 'astro.config.mjs', 'package.json', 'package-lock.json', 'tsconfig.json'];

export async function prepareOurs(folder: string, size: number, project = projectFolder): Promise<void> {
  await rm(folder, { recursive: true, force: true });
  await mkdir(folder, { recursive: true });
  for (const part of parts) await cp(join(project, part), join(folder, part), { recursive: true });
  await symlink(join(project, 'node_modules'), join(folder, 'node_modules'), 'junction');
  const place = join(folder, 'content/knowledge/explainers');
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
      join(place, `${article.name}.mdx`),
      `${head}\n\n${bodyWith(article, (name) => `/explainers/${name}/`)}`,
    );
  }
}
