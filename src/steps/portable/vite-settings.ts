/** What Vite must do differently for scripts that end up classic. */
import type { Plugin, Rolldown } from 'vite';
import { oldestBrowsers } from '../support/oldest-browsers.ts';

/** Astro marks its own article modules with a directive Vite warns about, once per article; it means nothing here. */
function onLog(
  level: Rolldown.LogLevel,
  log: Rolldown.RolldownLog,
  print: (level: Rolldown.LogLevel, log: Rolldown.RolldownLog) => void,
): void {
  if (log.code !== 'MODULE_LEVEL_DIRECTIVE') print(level, log);
}

const client = {
  assetsInlineLimit: 0,
  // Preload links carry crossorigin, which browsers refuse on file://.
  modulePreload: false as const,
};

export function classicVite(): Plugin {
  return {
    name: 'almanac-classic-scripts',
    // Astro asks for the newest: phones of some years ago would have no colors at all.
    config: () => ({ build: { assetsInlineLimit: 0, cssTarget: oldestBrowsers, rolldownOptions: { onLog } } }),
    configEnvironment: (name) => (name === 'client' ? { build: client } : undefined),
    // No island is handed a signal as a prop, so the renderer need not carry the way to load them.
    transform: {
      filter: { id: /@astrojs[\\/]preact[\\/]dist[\\/]client\.js$/ },
      handler(code) {
        if (!code.includes('import("@preact/signals")'))
          throw new Error(
            'The Preact renderer no longer loads signals the way src/steps/portable/vite-settings.ts expects.',
          );
        return { code: code.replace('await import("@preact/signals")', '{}'), map: null };
      },
    },
  };
}
