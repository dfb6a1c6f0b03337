/** npm run content: checks everything in content/ without building the site. */
import { checkContent } from '../steps/content-check/check-content.ts';
import { knownNames } from '../steps/content-check/known-names.ts';
import { report } from '../steps/content-check/problem.ts';
import { chooseShop } from '../steps/support/choose-shop.ts';
import { projectFolder } from './support/command.ts';

chooseShop(projectFolder);
const problems = await checkContent(projectFolder, await knownNames(projectFolder));
if (problems.length === 0) console.log('content/ is in order.');
else {
  console.error(report(problems));
  process.exitCode = 1;
}
