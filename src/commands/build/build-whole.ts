/** A whole build: the program and the content side by side, then the pages. */
import { fileURLToPath } from 'node:url';
import { chooseShop } from '../../steps/support/choose-shop.ts';
import type { CardsAhead } from '../../steps/cards/cards-ahead.ts';
import { findProgram } from './find-program.ts';

const projectFolder = fileURLToPath(new URL('../../../', import.meta.url));

/** @param hear told what goes on, line by line */
export async function buildWhole(dist: string, hear: (line: string) => void): Promise<void> {
  chooseShop(projectFolder);
  const stop = new AbortController();
  const { program, kept } = await findProgram(projectFolder, hear, stop.signal);
  try {
    // Loaded only now: it takes a second, in which the bundler is at work already.
    const { beginSite, checkedSite, Finisher, KnownTexts, letGo, makePages, meanwhile } =
      await import('./content-and-pages.ts');
    const finisher = new Finisher();
    // While content is checked the other thread has nothing else to do.
    const begun = program.then((made) => beginSite(made, dist, finisher));
    begun.catch(() => undefined);
    let cards: CardsAhead | undefined;
    try {
      const texts = await KnownTexts.load(kept?.folder);
      const site = await checkedSite(projectFolder, texts);
      letGo();
      cards = await meanwhile(projectFolder, site, program);
      const made = await program;
      texts.keep(made.folder);
      const ready = { site, program: made, finisher, cardsAhead: cards?.ended };
      await makePages({ project: projectFolder, begun: await begun, ...ready, say: hear });
    } finally {
      await cards?.stop();
      await finisher.stop();
    }
  } catch (reason) {
    stop.abort();
    throw reason;
  }
}
