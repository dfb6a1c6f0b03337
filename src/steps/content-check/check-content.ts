/** Reads all of content/ and gives everything that is wrong with it, in one run. */
import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { listFiles } from '../support/files.ts';
import { acrossFiles } from './across-files.ts';
import { bodyProblems } from './body-problems.ts';
import { readContentFile, type ContentFile } from './content-file.ts';
import { kinds, shopSchema } from './kinds.ts';
import { libraryOf, type Known } from './library.ts';
import type { Problem } from './problem.ts';
import { referenceProblems } from './references.ts';
import { schemaProblems } from './schema-problems.ts';

export async function checkContent(projectFolder: string, known: Known): Promise<Problem[]> {
  const files = await readAll(projectFolder);
  const library = libraryOf(files, known);
  const each = files.flatMap((file) => {
    const kind = kinds[file.folder];
    const schema = file.path === 'content/shop.yaml' ? shopSchema : kind?.schema;
    // A wrong folder or ending is told below; its fields would only add noise.
    if (!schema || (kind && !kind.endings.includes(file.ending))) return [];
    if (file.yaml.problems.length > 0) return file.yaml.problems;
    return [
      ...schemaProblems(file.path, file.yaml, schema),
      ...referenceProblems(file, library),
      ...bodyProblems(file, library),
    ];
  });
  return [...each, ...acrossFiles(files, library)];
}

async function readAll(projectFolder: string): Promise<ContentFile[]> {
  const folder = join(projectFolder, 'content');
  if (!existsSync(folder)) return [];
  const names = (await listFiles(folder)).filter((f) => !f.split('/').some((part) => part.startsWith('.')));
  return Promise.all(
    names.map(async (name) => readContentFile(`content/${name}`, await readFile(join(folder, name), 'utf8'))),
  );
}
