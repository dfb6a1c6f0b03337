/**
 * Hooks into Astro what happens around it: a fresh folder to build in and, after it, the licenses, the portable folder, the search
 * index, the offline worker, the files for hosts; in that order. Only a whole site takes the place of the one before.
 */
import { rm } from 'node:fs/promises';
import { fileURLToPath, pathToFileURL } from 'node:url';
import type { AstroIntegration } from 'astro';
import { notePackages, type PackageFolders } from './licenses/shipped-packages.ts';
import { noteProgram } from './program/program.ts';
import { programWanted } from './support/program-wanted.ts';
import { classicVite } from './portable/vite-settings.ts';
import { basePath, leftOutFiles } from './site-address.ts';
import { browserSources } from './support/browser-sources.ts';
import { FreshFolder } from './support/fresh-folder.ts';
import { shopColor } from './support/shop-says.ts';

export interface PortableOptions {
  /** Address the site will live at: its path for 404.html and the host's headers, the whole for search engines. */
  readonly site?: string | undefined;
}

export function portable(options: PortableOptions): AstroIntegration {
  let project: string;
  let fresh: FreshFolder | undefined;
  const shipped: PackageFolders = new Set();
  return {
    name: 'almanac-portable',
    hooks: {
      'astro:config:setup': async ({ command, config, updateConfig, addClientDirective }) => {
        project = fileURLToPath(new URL('./', config.root));
        if (command === 'build' && programWanted() === undefined)
          fresh = await FreshFolder.beside(fileURLToPath(config.outDir));
        if (command === 'build' || command === 'dev')
          await forgetContent(config.cacheDir, new URL('.astro/', config.root));
        addClientDirective({ name: 'reached', entrypoint: browserSources.reached });
        updateConfig({
          ...(fresh && { outDir: pathToFileURL(`${fresh.path}/`) }),
          build: { format: 'file', inlineStylesheets: 'never' },
          vite: { plugins: [classicVite(), notePackages(shipped)] },
        });
      },
      'astro:build:done': async ({ dir, logger }) => {
        const wanted = programWanted();
        if (wanted !== undefined) {
          const { addLicenses } = await import('./licenses/add-licenses.ts');
          await addLicenses(fileURLToPath(dir), shipped);
          return noteProgram(wanted);
        }
        const {
          addCards,
          cardCache,
          addLicenses,
          letGo,
          makePortable,
          stopAtBrokenLinks,
          addSearch,
          addWorker,
          addPublishing,
        } = await import('./after-pages.ts');
        const dist = fileURLToPath(dir);
        letGo();
        if (options.site !== undefined) await addCards(dist, cardCache(project), options.site, shopColor(project));
        await addLicenses(dist, shipped);
        logger.info('links, scripts and styles');
        await makePortable(dist, basePath(options.site), leftOutFiles(project)).catch(stopAtBrokenLinks);
        logger.info('search index');
        letGo();
        await addSearch(dist, project);
        logger.info('list for reading offline');
        await addWorker(dist);
        await addPublishing(dist, basePath(options.site), options.site);
        await fresh?.takePlace();
      },
    },
  };
}

/**
 * What Astro remembers of the articles it read. It holds a file it knows for unchanged when the words are the same,
 * and so loses one that was renamed; reading all of them again takes a second or two.
 */
async function forgetContent(...folders: readonly URL[]): Promise<void> {
  for (const folder of folders)
    for (const name of ['data-store.json', 'data-store/', 'content-modules.mjs', 'content-assets.mjs'])
      await rm(new URL(name, folder), { recursive: true, force: true });
}
