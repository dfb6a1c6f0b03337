/** The edition of what stands in dist/, and whether it is still the one the content asks for. */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { editionName, editionOf } from '../../steps/edition/edition.ts';
import { editionFile } from '../../steps/edition/integration.ts';

/** A sentence when there is no site, or only one from before the last change. */
export async function builtEdition(projectFolder: string, dist: string): Promise<{ edition: string } | string> {
  const file = join(dist, editionFile);
  if (!existsSync(file)) return 'There is no built site in dist/. Build it first: npm run build';
  const edition = readFileSync(file, 'utf8').trim();
  const wanted = editionName(await editionOf(projectFolder));
  return edition === wanted
    ? { edition }
    : `dist/ holds edition ${edition}; what stands in the project now would be ${wanted}. Build it first: npm run build`;
}
