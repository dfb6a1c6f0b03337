/** Reads all of content/ and gives everything that is wrong with it, in one run. */
import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { kindOf } from '../../schemas/kinds.ts';
import { places, shopFile } from '../../schemas/places.ts';
import { shop as shopSchema } from '../../schemas/shop.ts';
import { listFiles } from '../support/files.ts';
import { acrossFiles } from './across-files.ts';
import { bodyProblems } from './body-problems.ts';
import { readContentFile, type ContentFile } from './content-file.ts';
import { libraryOf, type Known } from './library.ts';
import type { Problem } from './problem.ts';
import { referenceProblems } from './references.ts';
import { schemaProblems } from './schema-problems.ts';

export async function checkContent(projectFolder: string, known: Known): Promise<Problem[]> {
  const files = withoutReplaced(await readAll(projectFolder));
  const library = libraryOf(files, known);
  const each = files.flatMap((file) => {
    const kind = file.place === '' ? undefined : kindOf(file.folder);
    const schema = file.path === shopFile ? shopSchema : kind?.schema;
    // A wrong folder or ending is told below; its fields would only add noise.
    if (!schema || (kind && kind.ending !== file.ending)) return [];
    if (file.yaml.problems.length > 0) return file.yaml.problems;
    return [
      ...schemaProblems(file.path, file.yaml, schema),
      ...referenceProblems(file, library),
      ...bodyProblems(file, library),
    ];
  });
  return [...each, ...acrossFiles(files, library)];
}

/** What the shop replaces is no longer part of the site. */
function withoutReplaced(files: readonly ContentFile[]): ContentFile[] {
  const rank = (file: ContentFile) => (places as readonly string[]).indexOf(file.place);
  return files.filter(
    (file) =>
      file.place === '' ||
      !files.some(
        (o) => o.folder === file.folder && o.id === file.id && o.ending === file.ending && rank(o) > rank(file),
      ),
  );
}

async function readAll(projectFolder: string): Promise<ContentFile[]> {
  const folder = join(projectFolder, 'content');
  if (!existsSync(folder)) return [];
  const names = (await listFiles(folder)).filter((f) => !f.split('/').some((part) => part.startsWith('.')));
  return Promise.all(
    names.map(async (name) => readContentFile(`content/${name}`, await readFile(join(folder, name), 'utf8'))),
  );
}
