/**
 * Preact for the islands, made quicker in a build: their syntax is turned by the bundler itself, not by Babel before
 * it, nothing is prepared for a browser that watches, and a component is not rendered once more only to ask whose it
 * is. While one writes, Preact's own way stays, which swaps a changed component in the open page.
 */
import { getContainerRenderer } from '@astrojs/preact/container-renderer';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { virtualModule } from '../support/virtual-module.ts';

/** Nothing else holds Preact's syntax. */
const include = ['**/src/islands/**/*.tsx'];
const renderer = fileURLToPath(new URL('./renderer.ts', import.meta.url));

const bundlersOwn = { oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } } } as const;

export function islands(): AstroIntegration {
  return {
    name: 'almanac-islands',
    hooks: {
      'astro:config:setup': async (setup) => {
        if (setup.command !== 'dev') {
          setup.addRenderer({ ...getContainerRenderer(), serverEntrypoint: renderer });
          setup.updateConfig({ vite: { plugins: [rendererOptions], ...bundlersOwn } });
          return;
        }
        // Loaded here: it brings Babel, of which a build has no use.
        const { default: preact } = await import('@astrojs/preact');
        await preact({ include }).hooks['astro:config:setup']?.({
          ...setup,
          addRenderer: (given) => setup.addRenderer({ ...given, serverEntrypoint: renderer }),
        });
      },
    },
  };
}

/** What Preact's renderer asks for: which files are its own. */
const rendererOptions = virtualModule('astro:preact:opts', () => `export default ${JSON.stringify({ include })};`);
