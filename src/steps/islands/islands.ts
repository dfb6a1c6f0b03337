/**
 * Preact for the islands, made quicker in a build: their syntax is turned by the bundler itself, not by Babel before
 * it, nothing is prepared for a browser that watches, and a component is not rendered once more only to ask whose it
 * is. While one writes, Preact's own way stays, which swaps a changed component in the open page.
 */
import preact from '@astrojs/preact';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import type { PluginOption } from 'vite';

/** Nothing else holds Preact's syntax. */
const include = ['**/src/islands/**/*.tsx'];
const renderer = fileURLToPath(new URL('./renderer.ts', import.meta.url));

/** Parts of the Preact integration a build goes without: Babel; and packages made ready for the server of `dev`. */
const onlyWhileWriting = ['vite:preact-jsx', '@astrojs/preact:environment'];
const bundlersOwn = { oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } } } as const;

export function islands(): AstroIntegration {
  const own = preact({ include });
  return {
    ...own,
    hooks: {
      ...own.hooks,
      'astro:config:setup': (setup) =>
        own.hooks['astro:config:setup']?.({
          ...setup,
          addRenderer: (given) => setup.addRenderer({ ...given, serverEntrypoint: renderer }),
          updateConfig: ({ vite, ...given }) =>
            setup.updateConfig({
              ...given,
              vite: setup.command === 'dev' ? vite : { plugins: forBuild(vite?.plugins ?? []), ...bundlersOwn },
            }),
        }),
    },
  };
}

function forBuild(given: readonly PluginOption[]): PluginOption[] {
  const all = given.flat() as PluginOption[];
  const nameOf = (one: PluginOption) => (one && 'name' in one ? one.name : '');
  const missing = onlyWhileWriting.find((name) => !all.some((one) => nameOf(one) === name));
  if (missing !== undefined)
    throw new Error(`The Preact integration brings no "${missing}", which src/steps/islands/islands.ts leaves out.`);
  return all.filter((one) => !onlyWhileWriting.includes(nameOf(one)));
}
