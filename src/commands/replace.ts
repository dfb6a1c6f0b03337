/**
 * npm run replace -- <page>: copies a page of the knowledge into the shop's folder, where it stands in for it, and notes
 * what the original was. "-- <page> --seen" notes the original as it is today, after the two were compared. Without a
 * page: lists every page of the shop that stands in for one of the knowledge. Exit: 0 done, 2 refused.
 */
import { listReplaced, replace } from './replace/replace.ts';
import { projectFolder } from './support/command.ts';
import { takeShop } from './support/shop.ts';

async function run(): Promise<void> {
  takeShop();
  const words = process.argv.slice(2);
  const strange = words.find((word) => word.startsWith('--') && word !== '--seen');
  const pages = words.filter((word) => !word.startsWith('--'));
  if (strange !== undefined || pages.length > 1) {
    console.error(
      strange === undefined
        ? `One page at a time: "${pages.join('", "')}".`
        : `There is no option "${strange}"; there is --seen.`,
    );
    process.exitCode = 2;
    return;
  }
  const [page] = pages;
  const said =
    page === undefined
      ? { done: await listReplaced(projectFolder) }
      : await replace(projectFolder, page, words.includes('--seen'));
  if ('done' in said) console.log(said.done);
  else {
    console.error(said.refused);
    process.exitCode = 2;
  }
}

try {
  await run();
} catch (reason) {
  console.error(reason instanceof Error ? reason.message : reason);
  process.exitCode = 2;
}
