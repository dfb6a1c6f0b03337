import { defineConfig } from 'vitest/config';

/** The tests that say most of a sum in the least time: its own, its cases, its thresholds. */
export default defineConfig({
  test: {
    root: new URL('../..', import.meta.url).pathname,
    testTimeout: 60_000,
    isolate: false,
    include: [
      'tests/core/{boundaries,thresholds,quantity,pins,topics}/**/*.test.ts',
      'tests/cases/*.test.ts',
      'tests/derived/*.test.ts',
    ],
  },
});
