/** Writes sw.js: the worker with the list of every file and its hash. Last step, after all files are final. */
import { hash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { build } from 'esbuild';
import { cardFolder } from '../cards/add-cards.ts';
import { browserSources } from '../support/browser-sources.ts';
import { classicOptions } from '../support/classic.ts';
import { listFiles } from '../support/files.ts';
import { markOfFile } from './mark-of-file.ts';

/** The worker itself, the page that only a host shows, and the pictures that only messages show. */
const notSaved = (file: string): boolean =>
  file === 'sw.js' || file === '404.html' || file.startsWith(`${cardFolder}/`);

/** @param marks of files that are as they were written, by name; the others are read */
export async function addWorker(dist: string, marks: Readonly<Record<string, string>> = {}): Promise<void> {
  const files: Record<string, string> = {};
  for (const file of await listFiles(dist))
    if (!notSaved(file)) files[file] = marks[file] ?? markOfFile(readFileSync(join(dist, file)));
  const list = JSON.stringify(files);
  const edition = hash('sha256', list, 'hex').slice(0, 12);
  const made = await build({
    entryPoints: [browserSources.worker],
    ...classicOptions,
    define: { FILES: list, EDITION: JSON.stringify(edition) },
  });
  await writeFile(join(dist, 'sw.js'), made.outputFiles[0]?.text ?? '');
}
