/** Writes sw.js: the worker with the list of every file and its hash. Last step, after all files are final. */
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { build } from 'esbuild';
import { cardFolder } from '../cards/add-cards.ts';
import { browserSources } from '../support/browser-sources.ts';
import { classicOptions } from '../support/classic.ts';
import { listFiles } from '../support/files.ts';

/** The worker itself, the page that only a host shows, and the pictures that only messages show. */
const notSaved = (file: string): boolean =>
  file === 'sw.js' || file === '404.html' || file.startsWith(`${cardFolder}/`);

export async function addWorker(dist: string): Promise<void> {
  const files: Record<string, string> = {};
  for (const file of await listFiles(dist))
    if (!notSaved(file))
      files[file] = createHash('sha256')
        .update(readFileSync(join(dist, file)))
        .digest('hex')
        .slice(0, 16);
  const list = JSON.stringify(files);
  const edition = createHash('sha256').update(list).digest('hex').slice(0, 12);
  const made = await build({
    entryPoints: [browserSources.worker],
    ...classicOptions,
    define: { FILES: list, EDITION: JSON.stringify(edition) },
  });
  await writeFile(join(dist, 'sw.js'), made.outputFiles[0]?.text ?? '');
}
