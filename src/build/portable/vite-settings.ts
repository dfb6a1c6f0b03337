/** What Vite must do differently for scripts that end up classic. */
import type { Plugin } from 'vite';

export function classicVite(): Plugin {
  return {
    name: 'almanac-classic-scripts',
    config: () => ({ build: { assetsInlineLimit: 0 } }),
    // Preload links carry crossorigin, which browsers refuse on file://.
    configEnvironment: (name) => (name === 'client' ? { build: { modulePreload: false, assetsInlineLimit: 0 } } : undefined),
    // No island is handed a signal as a prop, so the renderer need not carry the way to load them.
    transform: {
      filter: { id: /@astrojs[\\/]preact[\\/]dist[\\/]client(?:-dev)?\.js/ },
      handler(code) {
        if (!code.includes('import("@preact/signals")')) throw new Error('The Preact renderer no longer loads signals the way src/build/portable/vite-settings.ts expects.');
        return { code: code.replace('await import("@preact/signals")', '{}'), map: null };
      },
    },
  };
}
