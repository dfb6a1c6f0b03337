/** The shop a command is about. */
import { chooseShop } from '../../steps/support/choose-shop.ts';
import { projectFolder } from './command.ts';

/** Takes the shop that SHOP names, or the demo's. Where there is none the command ends with a sentence, code 2. */
export function takeShop(): void {
  try {
    chooseShop(projectFolder);
  } catch (reason) {
    console.error((reason as Error).message);
    process.exit(2);
  }
}

/** For whoever forgot to name a shop. */
export const demoShopShown = 'That is the demo shop; SHOP=<your shop’s folder> before the command means yours.';
