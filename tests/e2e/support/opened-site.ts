/** The browser and the server of one test file: opened before its tests, closed after them. */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll } from 'vitest';
import { serveFolder, type Serving } from '../../../src/commands/support/serve.ts';
import { launch } from './browser.ts';
import { dist } from './site.ts';

export interface OpenedSite {
  /** The browser; asked for before the tests have begun, it says so. */
  readonly browser: Browser;
  readonly serving: Serving;
}

/** Opens the built site for the tests of a file; `base` is the folder it stands in on the server. */
export function openedSite({ base }: { readonly base?: string } = {}): OpenedSite {
  let open: OpenedSite | undefined;
  const opened = (): OpenedSite => {
    if (!open)
      throw new Error(
        'The browser and the server of a test file are opened before its first test, not while it is read.',
      );
    return open;
  };
  beforeAll(async () => {
    open = { browser: await launch(), serving: await serveFolder(dist, base === undefined ? {} : { base }) };
  });
  afterAll(async () => {
    await open?.browser.close();
    await open?.serving.close();
  });
  return {
    get browser() {
      return opened().browser;
    },
    get serving() {
      return opened().serving;
    },
  };
}
