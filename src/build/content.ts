/** npm run content: checks everything in content/ without building the site. */
import { checkContent } from './content-check/check-content.ts';
import { knownNames } from './content-check/known-names.ts';
import { report } from './content-check/problem.ts';
import { projectFolder } from './run/command.ts';

const problems = await checkContent(projectFolder, await knownNames(projectFolder));
if (problems.length === 0) console.log('content/ is in order.');
else {
  console.error(report(problems));
  process.exitCode = 1;
}
