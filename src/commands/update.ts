/**
 * npm run update -- <folder or archive>: takes a new engine and new knowledge, never touches the shop, and lists the
 * pages of the shop that stand in for one of the knowledge which has changed. --look says what would change and changes
 * nothing. Exit: 0 done, 2 refused.
 */
import { resolve } from 'node:path';
import { chooseShop } from '../steps/support/choose-shop.ts';
import { projectFolder } from './support/command.ts';
import { update } from './update/update.ts';

function refuse(sentence: string): void {
  console.error(sentence);
  process.exitCode = 2;
}

const words = process.argv.slice(2);
const [from, ...more] = words.filter((word) => !word.startsWith('--'));
const strange = words.find((word) => word.startsWith('--') && word !== '--look');
if (strange !== undefined) refuse(`There is no option "${strange}"; there is --look.`);
else if (from === undefined || more.length > 0)
  refuse('Name the folder or archive with the new almanac: npm run update -- ../bench-almanac-new');
else
  try {
    chooseShop(projectFolder);
    console.log(await update(projectFolder, resolve(from), words.includes('--look')));
  } catch (reason) {
    refuse(reason instanceof Error ? reason.message : String(reason));
  }
