/** SHOP=<folder>: another shop than the demo's, reached through a link in content/ so that all else finds it there. */
import { existsSync, lstatSync, realpathSync, rmSync, symlinkSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { chosenShop } from '../../schemas/places.ts';

/** Makes the link, or takes away the one of an earlier run. Throws with a sentence when the folder is no shop. */
export function chooseShop(projectFolder: string, folder = process.env['SHOP']): void {
  const link = join(projectFolder, chosenShop);
  // A build asks twice, from two programs at once: the link of the first must not vanish under its feet.
  if (folder && existsSync(link) && realpathSync(link) === (existsSync(folder) ? realpathSync(folder) : '')) return;
  if (lstatSync(link, { throwIfNoEntry: false })) rmSync(link, { recursive: lstatSync(link).isDirectory() });
  if (!folder) return;
  const shop = resolve(folder);
  if (!existsSync(join(shop, 'shop.yaml')))
    throw new Error(
      `SHOP names ${shop}, which holds no shop.yaml. "npm run shop:new -- ${folder}" makes a shop there.`,
    );
  // A junction needs no special rights on Windows; elsewhere the word is passed over.
  symlinkSync(shop, link, 'junction');
}
