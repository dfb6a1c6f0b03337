/**
 * npm run publish:check: whether the site in dist/ may go out to readers: content in order, twins there, no drafts, no
 * page long unreviewed, unseen sources marked, pictures small. Exit: 0 ready, 1 not ready, 2 nothing to look at.
 */
import { join } from 'node:path';
import { knownNames } from '../steps/content-check/known-names.ts';
import { report } from '../steps/content-check/problem.ts';
import { localDay } from '../steps/support/local-day.ts';
import { notReady } from './publish/readiness.ts';
import { builtEdition } from './support/built-edition.ts';
import { projectFolder } from './support/command.ts';
import { takeShop } from './support/shop.ts';

async function check(): Promise<number> {
  takeShop();
  const dist = join(projectFolder, 'dist');
  const built = await builtEdition(projectFolder, dist);
  if (typeof built === 'string') {
    console.error(built);
    return 2;
  }
  const problems = await notReady(projectFolder, dist, await knownNames(projectFolder), localDay());
  if (problems.length > 0) {
    console.error(report(problems).replace(/ in content\/\.$/, ' between this site and its readers.'));
    return 1;
  }
  console.log(`Edition ${built.edition} is ready: copy all of dist/ to your host, or "npm run pack" for a stick.`);
  return 0;
}

process.exitCode = await check();
