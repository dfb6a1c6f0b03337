/** One Chromium for the whole of `npm test`, which all test files share; single files start their own when run alone. */
import { chromium } from 'playwright-core';
import type { TestProject } from 'vitest/node';
import { findChromium } from '../../../src/commands/support/chromium.ts';
import { asRoot } from './browser-options.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** Where the shared browser listens; nothing when each file has its own. */
    browserAddress: string | undefined;
  }
}

export default async function setup(project: TestProject): Promise<(() => Promise<void>) | undefined> {
  const executablePath = process.env['ALMANAC_ONE_BROWSER'] === 'yes' ? findChromium() : undefined;
  if (executablePath === undefined) return undefined;
  const server = await chromium.launchServer({ executablePath, args: asRoot() });
  project.provide('browserAddress', server.wsEndpoint());
  return () => server.close();
}
