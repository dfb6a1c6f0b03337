/** The parts of a build that have much to load themselves, and so come after the bundler was started. */
import { checkedFiles } from '../../steps/content-check/check-content.ts';
import { stopAtProblems } from '../../steps/content-check/integration.ts';
import { knownNames } from '../../steps/content-check/known-names.ts';
import { siteData, type SiteData } from '../../steps/program/site-data.ts';

export { makePages } from '../../steps/pages/make-pages.ts';
export { letGo } from '../../steps/support/let-go.ts';

/** What was read to check it is let go with the end of this. */
export async function checkedSite(project: string): Promise<SiteData> {
  const { problems, files } = await checkedFiles(project, await knownNames(project));
  if (problems.length > 0) stopAtProblems(problems);
  return siteData(project, files);
}
