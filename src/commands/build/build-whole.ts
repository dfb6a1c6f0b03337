/** A whole build: the program and the content side by side, then the pages. */
import { fileURLToPath } from 'node:url';
import { chooseShop } from '../../steps/support/choose-shop.ts';
import { findProgram } from './find-program.ts';

const projectFolder = fileURLToPath(new URL('../../../', import.meta.url));

/** @param hear told what goes on, line by line */
export async function buildWhole(dist: string, hear: (line: string) => void): Promise<void> {
  chooseShop(projectFolder);
  const stop = new AbortController();
  const { program } = await findProgram(projectFolder, hear, stop.signal);
  try {
    // Loaded only now: it takes a second, in which the bundler is at work already.
    const { checkedSite, Finisher, letGo, makePages, meanwhile } = await import('./content-and-pages.ts');
    const finisher = new Finisher();
    try {
      const site = await checkedSite(projectFolder);
      letGo();
      await meanwhile(projectFolder, site, program);
      await makePages({ project: projectFolder, dist, program: await program, site, finisher, say: hear });
    } finally {
      await finisher.stop();
    }
  } catch (reason) {
    stop.abort();
    throw reason;
  }
}
