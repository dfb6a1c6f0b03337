/** Hooks into Astro what happens after it: the portable folder, the search index, the offline worker; in that order. */
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { addSearch } from './search/add-search.ts';
import { addWorker } from './worker/add-worker.ts';
import { BrokenLinks, makePortable } from './portable/make-portable.ts';
import { classicVite } from './portable/vite-settings.ts';

export interface PortableOptions {
  /** Address the site will live at; only its path is used, and only by 404.html. */
  readonly site?: string | undefined;
}

export function portable(options: PortableOptions): AstroIntegration {
  let project: string;
  return {
    name: 'almanac-portable',
    hooks: {
      'astro:config:setup': ({ config, updateConfig }) => {
        project = fileURLToPath(new URL('./', config.root));
        updateConfig({ build: { format: 'file', inlineStylesheets: 'never' }, vite: { plugins: [classicVite()] } });
      },
      'astro:build:done': async ({ dir }) => {
        const dist = fileURLToPath(dir);
        await makePortable(dist, basePath(options.site)).catch(stopAtBrokenLinks);
        await addSearch(dist, project);
        await addWorker(dist);
      },
    },
  };
}

/** A list for people needs no stack trace. */
function stopAtBrokenLinks(reason: unknown): void {
  if (!(reason instanceof BrokenLinks)) throw reason;
  console.error(reason.message);
  process.exit(1);
}

function basePath(site: string | undefined): string {
  return site === undefined ? '/' : new URL(site).pathname.replace(/\/?$/, '/');
}
