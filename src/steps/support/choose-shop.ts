/** SHOP=<folder>: another shop than the demo's, reached through a link in content/ so that all else finds it there. */
import { existsSync, lstatSync, readdirSync, realpathSync, rmdirSync, rmSync, symlinkSync } from 'node:fs';
import { basename, dirname, join, resolve, sep } from 'node:path';
import { chosenShop, shopFileName } from '../../schemas/places.ts';
import { alreadyRuns, runningServer } from './running-server.ts';
import { inUse, noteUse, useBeside } from './shop-in-use.ts';

/**
 * Makes the link, or takes away the one of an earlier run. Throws with a sentence when the folder is no shop, or when
 * the link is what a running server for writing, or another command, reaches another shop by.
 */
export function chooseShop(projectFolder: string, folder = process.env['SHOP']): void {
  const link = join(projectFolder, chosenShop);
  const shop = resolve(folder ?? '');
  // Two commands for one shop may be at work at once.
  if (folder && existsSync(join(shop, shopFileName)) && existsSync(link) && realpathSync(link) === realpathSync(shop))
    return noteUse(projectFolder, folder);
  if (folder && !existsSync(join(shop, shopFileName))) throw said(noShop(shop, folder));
  const running = runningServer(projectFolder);
  if (running?.folder !== undefined) {
    // Who forgot SHOP in a second window is about the demo's shop; the pages in the first stand as they did.
    if (!folder) return;
    throw said(alreadyRuns(running));
  }
  const use = useBeside(projectFolder);
  if (use) {
    if (!folder) return;
    throw said(inUse(use));
  }
  takeAway(link);
  if (!folder) return;
  // A junction needs no special rights on Windows; elsewhere the word is passed over.
  symlinkSync(shop, link, 'junction');
  noteUse(projectFolder, folder);
}

function takeAway(link: string): void {
  const there = lstatSync(link, { throwIfNoEntry: false });
  if (!there) return;
  if (!there.isDirectory()) return rmSync(link);
  if (readdirSync(link).length > 0)
    throw said(
      `${chosenShop} is a folder of its own, with files in it: move them into your shop’s folder, then delete it.`,
    );
  rmdirSync(link);
}

function noShop(shop: string, folder: string): string {
  const found = `SHOP names ${shop}, which holds no ${shopFileName}.`;
  if (basename(folder) === shopFileName) return `${found} It names the folder, not the file: SHOP=${dirname(folder)}`;
  if (sep === '/' && folder.includes('\\'))
    return `${found} Folders are parted by "/" here: ${folder.replaceAll('\\', '/')}`;
  return `${found} "npm run shop:new -- ${folder}" makes a shop there.`;
}

/** A fault of whoever typed, not of the program: the sentence says all, and the place in the program nothing. */
function said(sentence: string): Error {
  return Object.assign(new Error(sentence), { hint: '', stack: '' });
}
