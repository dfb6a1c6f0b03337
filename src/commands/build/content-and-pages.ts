/** The parts of a build that have much to load themselves, and so come after the bundler was started. */
import { flushCompileCache } from 'node:module';
import { setImmediate } from 'node:timers/promises';
import { cardCache } from '../../steps/cards/add-cards.ts';
import { CardsAhead } from '../../steps/cards/cards-ahead.ts';
import { checkedFiles } from '../../steps/content-check/check-content.ts';
import { stopAtProblems } from '../../steps/content-check/integration.ts';
import { KnownTexts } from '../../steps/content-check/known-texts.ts';
import { knownNames } from '../../steps/content-check/known-names.ts';
import { shopOf } from '../../steps/one-shop.ts';
import { siteAddress } from '../../steps/site-address.ts';
import { localDay } from '../../steps/support/local-day.ts';
import { shopColor } from '../../steps/support/shop-says.ts';
import { siteData, type SiteData } from '../../steps/program/site-data.ts';

export { KnownTexts };
export { Finisher } from '../../steps/pages/finisher.ts';
export { beginSite, makePages } from '../../steps/pages/make-pages.ts';
export { letGo } from '../../steps/support/let-go.ts';

/** What was read to check it is let go with the end of this. */
export async function checkedSite(project: string, texts: KnownTexts): Promise<SiteData> {
  const { problems, files } = await checkedFiles(project, await knownNames(project), localDay(), texts);
  if (problems.length > 0) stopAtProblems(problems);
  return siteData(project, files);
}

/**
 * While the bundler is at work there is little else to do: what the program will take long to load is loaded, what Node
 * made of the build's own program is kept, and a thread begins to draw the cards of articles.
 */
export async function meanwhile(
  project: string,
  site: SiteData,
  program: Promise<unknown>,
): Promise<CardsAhead | undefined> {
  let done = false;
  const isDone = () => (done = true);
  program.then(isDone, isDone);
  await setImmediate();
  if (done) return undefined;
  const cards = cardsAhead(project, site);
  await Promise.all([import('mathjs/number'), import('temml'), import('uqr')]);
  // Otherwise written when the build ends, and waited for.
  flushCompileCache();
  return cards;
}

function cardsAhead(project: string, { store }: SiteData): CardsAhead | undefined {
  const site = siteAddress();
  if (site === undefined) return undefined;
  const titles = [...store.values()].flatMap((entries) =>
    [...entries.values()].flatMap(({ body, data: { title } }) =>
      body !== undefined && typeof title === 'string' ? [title] : [],
    ),
  );
  return new CardsAhead({
    titles,
    shop: shopOf(project).name,
    cache: cardCache(project),
    site,
    color: shopColor(project),
  });
}
