import { defineConfig } from 'vitest/config';
import { LongestFirst } from './longest-first.ts';

const root = new URL('..', import.meta.url).pathname;
// Generous, for slow machines: a test that hangs fails all the same, and none is about time.
const times = { testTimeout: 180_000, hookTimeout: 300_000 };
/** Tests that build sites, open pages or start programs. */
const outside = ['tests/{commands,e2e,engines,search,steps}/**/*.test.ts', 'tests/browser/device/**/*.test.ts'];

/** A plain config on purpose: core tests need no Astro and no browser. */
export default defineConfig({
  test: {
    root,
    sequence: { sequencer: LongestFirst },
    // Every core gets a worker, where the default leaves one idle; more than that only wait for each other.
    maxWorkers: '100%',
    projects: [
      {
        test: {
          ...times,
          name: 'core and kit',
          root,
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: outside,
          // The core keeps no state, so its modules are read once a worker and not once a file: a third of the time.
          isolate: false,
        },
      },
      {
        test: {
          ...times,
          name: 'site',
          root,
          include: outside,
          globalSetup: 'tests/e2e/support/one-browser.ts',
          // Three engines are pressed some thousand times in a run, and one of them loses a frame now and then. The run
          // names what passed only so.
          retry: 1,
        },
      },
    ],
  },
});
