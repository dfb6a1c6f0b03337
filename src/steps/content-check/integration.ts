/**
 * Checks content/ before Astro does anything, and stops a build with the list and nothing else. Under `npm run dev` the
 * check runs beside the server instead, again and again: see ../writing/.
 */
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { programWanted } from '../support/program-wanted.ts';
import { stopBuild } from '../support/stop-build.ts';
import { report, type Problem } from './problem.ts';

export function checkedContent(): AstroIntegration {
  return {
    name: 'almanac-content-check',
    hooks: {
      'astro:config:setup': async ({ config, command }) => {
        if (programWanted() !== undefined || command !== 'build') return;
        // Loaded here: where Astro makes the program alone, none of it is wanted.
        const { checkContent } = await import('./check-content.ts');
        const { knownNames } = await import('./known-names.ts');
        const folder = fileURLToPath(config.root);
        const problems = await checkContent(folder, await knownNames(folder));
        if (problems.length > 0) stopAtProblems(problems);
      },
    },
  };
}

export function stopAtProblems(problems: readonly Problem[]): never {
  stopBuild(
    'Something in content/ is not right; the site was not built.',
    'Each place is listed above, by file and line. `npm run content` checks again without building.',
    report(problems),
  );
}
