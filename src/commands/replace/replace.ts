/** What "npm run replace" does, in one folder. */
import { nameIn, nameOf, others } from '../../words/lang.ts';
import { copyFileSync, existsSync, mkdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { kindOf, kinds } from '../../schemas/kinds.ts';
import { pathToSay, places, shopFolder } from '../../schemas/places.ts';
import { didYouMean } from '../../steps/content-check/problem.ts';
import { listFiles } from '../../steps/support/files.ts';
import { markOf, readMarks, standings, writeMarks } from './originals.ts';

const knowledgeIn = (project: string) => join(project, places[0] ?? '');
const said = (page: string) => pathToSay(`${shopFolder}/${page}`);
const shopIn = (project: string) => join(project, shopFolder);

/** Every page of the shop that stands in for one of the knowledge, each with what became of its original. */
export async function listReplaced(project: string): Promise<string> {
  const shop = shopIn(project);
  const all = await standings(shop, knowledgeIn(project), readMarks(shop));
  if (all.length === 0) return 'No page of the shop stands in for one of the knowledge.';
  return all.map(({ page, state }) => `${said(page)}  original: ${state}`).join('\n');
}

/** "jobs/belt", "jobs/belt.mdx" and "content/knowledge/jobs/belt.mdx" are one page. */
function fileOf(asked: string): string {
  const page = asked.replaceAll('\\', '/').replace(/^(?:content\/(?:knowledge|shop)\/)/, '');
  const kind = kindOf(page.split('/')[0] ?? '');
  return !kind || page.endsWith(`.${kind.ending}`) ? page : `${page}.${kind.ending}`;
}

/** @param seen the two were compared: note the original as it is */
export async function replace(
  project: string,
  asked: string,
  seen: boolean,
): Promise<{ done: string } | { refused: string }> {
  const [knowledge, shop] = [knowledgeIn(project), shopIn(project)];
  const page = fileOf(asked);
  const original = join(knowledge, page);
  if (!existsSync(original) || !page.includes('/') || page.includes('..')) {
    const known = (await listFiles(knowledge)).filter((file) => Object.keys(kinds).includes(file.split('/')[0] ?? ''));
    return { refused: `There is no ${places[0]}/${page}.${didYouMean(page, known)}` };
  }
  const own = join(shop, page);
  if (seen !== existsSync(own))
    return {
      refused: seen
        ? `There is no ${said(page)} to compare with. Without --seen the page is copied there.`
        : `${said(page)} is there already; nothing was changed. Have you compared the two? Add --seen.`,
    };
  if (!seen) {
    mkdirSync(dirname(own), { recursive: true });
    copyFileSync(original, own);
  }
  writeMarks(shop, { ...readMarks(shop), [page]: markOf(readFileSync(original, 'utf8')) });
  if (seen) return { done: `Noted: ${said(page)} was compared with its original as it is today.` };
  const [folder = '', ...name] = page.split('/');
  const twins = others
    .map((lang) => ({ language: nameOf(lang), page: `${folder}/${nameIn(lang, name.join('/'))}` }))
    .filter((twin) => existsSync(join(knowledge, twin.page)) && !existsSync(join(shop, twin.page)));
  return {
    done: `Made ${said(page)}: it now stands in for the page of the knowledge. Change it there${page.endsWith('.mdx') ? ', and put the day into "reviewed"' : ''}.${twins
      .map((twin) => `\nIts ${twin.language} twin is still the almanac's: npm run replace -- ${twin.page}`)
      .join('')}`,
  };
}
