/**
 * A folder for a site that a test builds. It lies inside the project: Astro puts what it renders with beside the
 * output where that is inside, and into one folder shared by all builds where it is not, where two would meet. No
 * server that watches files looks into node_modules.
 */
import { mkdir, mkdtemp } from 'node:fs/promises';
import { join } from 'node:path';
import { projectFolder } from '../../src/commands/support/command.ts';

export async function buildPlace(name: string): Promise<string> {
  const top = join(projectFolder, 'node_modules', '.test-sites');
  await mkdir(top, { recursive: true });
  return mkdtemp(join(top, `tests-${name}-`));
}
