/** What shop.yaml names beside itself: its mark, its color, the pages it leaves out, the pages it has replaced. */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { shopFile, shopFolder } from '../../schemas/places.ts';
import { replacedFile } from '../../schemas/replaced.ts';
import { colorProblem } from '../look/color-problems.ts';
import { markProblem } from '../look/mark.ts';
import { tokens } from '../look/tokens.ts';
import type { ContentFile } from './content-file.ts';
import { didYouMean, shown, type Problem } from './problem.ts';

/** Whether a file belongs to the shop itself, not to its articles: its mark, its list of replaced pages. */
export function isShopsOwn(file: ContentFile, shop: ContentFile | undefined): boolean {
  const { mark } = fieldsOf(shop);
  return file.path === `${shopFolder}/${replacedFile}` || (isText(mark) && file.path === `${shopFolder}/${mark}`);
}

/** @param files everything the shop does not replace, also what it leaves out */
export function shopProblems(
  projectFolder: string,
  shop: ContentFile | undefined,
  files: readonly ContentFile[],
): Problem[] {
  if (!shop) return [];
  const { mark, color, leaveOut } = fieldsOf(shop);
  const say = (path: readonly (string | number)[], got: string, allowed: string): Problem => ({
    file: shopFile,
    line: shop.yaml.lineOf(path),
    field: path.join('.'),
    got,
    allowed,
  });
  const problems: Problem[] = [];
  if (isText(mark)) {
    const path = join(projectFolder, shopFolder, mark);
    const wrong = existsSync(path)
      ? markProblem(mark, readFileSync(path))
      : { got: shown(mark), allowed: `a file that exists; ${shopFolder}/${mark} does not` };
    if (wrong) problems.push(say(['mark'], wrong.got, wrong.allowed));
  }
  if (isText(color) && /^#[0-9a-f]{6}$/i.test(color)) {
    const wrong = colorProblem(color, tokens());
    if (wrong) problems.push(say(['color'], wrong.got, wrong.allowed));
  }
  if (Array.isArray(leaveOut)) {
    const pages = new Map(files.filter((f) => f.folder !== '').map((f) => [`${f.folder}/${f.id}`, f]));
    leaveOut.forEach((page: unknown, at) => {
      if (!isText(page)) return;
      const file = pages.get(page);
      if (!file)
        problems.push(
          say(['leaveOut', at], shown(page), `a page of content/knowledge.${didYouMean(page, pages.keys())}`),
        );
      else if (file.place === shopFolder)
        problems.push(
          say(['leaveOut', at], `${page}, which is a page of your own`, `${file.path} taken away, or not left out`),
        );
    });
  }
  return problems;
}

const isText = (value: unknown): value is string => typeof value === 'string';

function fieldsOf(shop: ContentFile | undefined): { mark?: unknown; color?: unknown; leaveOut?: unknown } {
  const data = shop?.yaml.data;
  return typeof data === 'object' && data !== null ? data : {};
}
