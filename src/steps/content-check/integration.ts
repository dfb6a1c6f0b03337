/** Checks content/ before Astro does anything, and stops a build with the list and nothing else. */
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { checkContent } from './check-content.ts';
import { knownNames } from './known-names.ts';
import { report } from './problem.ts';

export function checkedContent(): AstroIntegration {
  return {
    name: 'almanac-content-check',
    hooks: {
      'astro:config:setup': async ({ config, command }) => {
        if (command !== 'build' && command !== 'dev') return;
        const folder = fileURLToPath(config.root);
        const problems = await checkContent(folder, await knownNames(folder));
        if (problems.length === 0) return;
        console.error(report(problems));
        if (command === 'dev') return;
        console.error('The site was not built.');
        process.exit(1);
      },
    },
  };
}
