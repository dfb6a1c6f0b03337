/** Lets Astro make the program alone (see program.ts), or, where Astro builds by itself, hands it the content. */
import { rename } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { givenAtRunTime, givenStore, nobodyListens } from './given.ts';
import { serverFolder } from './program.ts';
import { programWanted } from '../support/program-wanted.ts';

export function program(): AstroIntegration {
  let project: string;
  return {
    name: 'almanac-program',
    hooks: {
      'astro:config:setup': ({ command, config, updateConfig }) => {
        project = fileURLToPath(config.root);
        if (command === 'build')
          updateConfig({ vite: { plugins: [givenAtRunTime()], resolve: { alias: [givenStore] } } });
        else updateConfig({ vite: { plugins: [nobodyListens] } });
      },
      'astro:build:start': ({ setPrerenderer }) => {
        setPrerenderer((own) =>
          programWanted() === undefined
            ? {
                ...own,
                setup: async () => {
                  const { readContent } = await import('../content-check/check-content.ts');
                  const { handToProgram, siteData } = await import('./site-data.ts');
                  handToProgram(await siteData(project, await readContent(project)));
                  await own.setup?.();
                },
              }
            : { ...own, setup: () => Promise.resolve(), getStaticPaths: () => Promise.resolve([]) },
        );
      },
      // Astro takes its program for pages away once they are made.
      'astro:build:generated': async ({ dir }) => {
        const wanted = programWanted();
        if (wanted !== undefined) await rename(fileURLToPath(new URL('.prerender/', dir)), join(wanted, serverFolder));
      },
    },
  };
}
