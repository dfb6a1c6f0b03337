import { defineConfig } from 'vitest/config';

/** Every test that needs neither a page nor a build, but for those that read the source itself. */
export default defineConfig({
  test: {
    root: new URL('../..', import.meta.url).pathname,
    testTimeout: 600_000,
    isolate: false,
    exclude: ['tests/core/docstrings.test.ts'],
    include: ['tests/core/**/*.test.ts', 'tests/cases/*.test.ts', 'tests/derived/*.test.ts'],
  },
});
