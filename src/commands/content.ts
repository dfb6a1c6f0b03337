/** npm run content: checks everything in content/ without building the site. */
import { checkContent } from '../steps/content-check/check-content.ts';
import { knownNames } from '../steps/content-check/known-names.ts';
import { report } from '../steps/content-check/problem.ts';
import { shopNamed } from '../schemas/places.ts';
import { languages, nameOf, wordsIn } from '../words/lang.ts';
import { languagesOfShop } from '../steps/support/shop-says.ts';
import { projectFolder } from './support/command.ts';
import { takeShop } from './support/shop.ts';

takeShop();
const problems = await checkContent(projectFolder, await knownNames(projectFolder));
if (problems.length === 0)
  console.log(`${process.env['SHOP'] ? `${shopNamed} and content/ are` : 'content/ is'} in order.`);
else {
  console.error(report(problems));
  process.exitCode = 1;
}
const spoken = languagesOfShop(projectFolder);
for (const lang of languages.filter((one) => spoken.has(one) && !wordsIn(one).reading))
  console.log(`Not measured: how easy ${nameOf(lang)} is to read; src/words/${lang} has no reading.ts.`);
