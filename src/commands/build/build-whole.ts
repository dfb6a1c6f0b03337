/** A whole build: the program and the content side by side, then the pages. */
import { fileURLToPath } from 'node:url';
import { checkedFiles } from '../../steps/content-check/check-content.ts';
import { stopAtProblems } from '../../steps/content-check/integration.ts';
import { knownNames } from '../../steps/content-check/known-names.ts';
import { makePages } from '../../steps/pages/make-pages.ts';
import { siteData, type SiteData } from '../../steps/program/site-data.ts';
import { letGo } from '../../steps/support/let-go.ts';
import { chooseShop } from '../../steps/support/choose-shop.ts';
import { findProgram } from './find-program.ts';

const projectFolder = fileURLToPath(new URL('../../../', import.meta.url));

/** @param hear told what goes on, line by line */
export async function buildWhole(dist: string, hear: (line: string) => void): Promise<void> {
  chooseShop(projectFolder);
  const stop = new AbortController();
  const program = findProgram(projectFolder, hear, stop.signal);
  // Said when it is asked for below; nobody hears it before.
  program.catch(() => undefined);
  try {
    const site = await checkedSite();
    letGo();
    await makePages({ project: projectFolder, dist, program: await program, site, say: hear });
  } catch (reason) {
    stop.abort();
    throw reason;
  }
}

/** What was read to check it is let go with the end of this. */
async function checkedSite(): Promise<SiteData> {
  const { problems, files } = await checkedFiles(projectFolder, await knownNames(projectFolder));
  if (problems.length > 0) stopAtProblems(problems);
  return siteData(projectFolder, files);
}
