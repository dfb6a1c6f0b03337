/**
 * Preact for the islands, made quicker in a build: their syntax is turned by the bundler itself, not by Babel before
 * it, and a component is not rendered once more only to ask whose it is. While one writes, Preact's own way stays,
 * which swaps a changed component in the open page.
 */
import preact from '@astrojs/preact';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import type { PluginOption } from 'vite';

/** Nothing else holds Preact's syntax. */
const include = ['**/src/islands/**/*.tsx'];
const babel = 'vite:preact-jsx';
const renderer = fileURLToPath(new URL('./renderer.ts', import.meta.url));

export function islands(): AstroIntegration {
  const own = preact({ include });
  return {
    ...own,
    hooks: {
      ...own.hooks,
      'astro:config:setup': (setup) => {
        const build = setup.command === 'build';
        return own.hooks['astro:config:setup']?.({
          ...setup,
          addRenderer: (given) => setup.addRenderer({ ...given, serverEntrypoint: renderer }),
          updateConfig: (given) => {
            const plugins = build ? withoutBabel(given.vite?.plugins ?? []) : given.vite?.plugins;
            return setup.updateConfig({ ...given, vite: { ...given.vite, ...(build && bundlersOwn), plugins } });
          },
        });
      },
    },
  };
}

const bundlersOwn = { oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } } } as const;

function withoutBabel(given: readonly PluginOption[]): PluginOption[] {
  const all = given.flat() as PluginOption[];
  const rest = all.filter((one) => !(one && 'name' in one && one.name === babel));
  if (rest.length !== all.length - 1)
    throw new Error(`The Preact integration brings no "${babel}", which src/steps/islands/islands.ts leaves out.`);
  return rest;
}
