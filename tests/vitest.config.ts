import { defineConfig } from 'vitest/config';

/** A plain config on purpose: core tests need no Astro and no browser. */
export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    testTimeout: 60_000,
    hookTimeout: 180_000,
  },
});
