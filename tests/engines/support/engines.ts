/** The browsers that may stand on this machine beside Chromium, which all other tests use. */
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { chromium } from 'playwright-core';
import { findChromium } from '../../../src/commands/support/chromium.ts';
import { asRoot } from '../../e2e/support/browser-options.ts';
import { openFirefox } from './firefox.ts';
import type { Tab } from './tab.ts';
import { openWebKit } from './webkit.ts';

export interface Engine {
  readonly name: string;
  /** Nothing where it is not on this machine. */
  readonly open: (() => Promise<Tab>) | undefined;
  /** How it is put on a Debian machine. */
  readonly install: string;
}

const folders = (process.env['PATH'] ?? '').split(delimiter);
const onPath = (...names: readonly string[]) =>
  names.flatMap((name) => folders.map((folder) => join(folder, name))).find((file) => existsSync(file));

const firefox = onPath('firefox-esr', 'firefox');
const driver = onPath('WebKitWebDriver');
const display = onPath('xvfb-run');
const miniBrowser = ['4.1', '6.0', '4.0']
  .flatMap((version) =>
    ['x86_64', 'aarch64'].map((kind) => `/usr/lib/${kind}-linux-gnu/webkit2gtk-${version}/MiniBrowser`),
  )
  .find((file) => existsSync(file));
const found = findChromium();

export const engines: readonly Engine[] = [
  {
    name: 'Chromium',
    open: found === undefined ? undefined : () => openChromium(found),
    install: 'apt-get install chromium',
  },
  {
    name: 'Firefox',
    open: firefox === undefined ? undefined : () => openFirefox(firefox),
    install: 'apt-get install firefox-esr',
  },
  {
    name: 'WebKit',
    open: driver && display && miniBrowser ? () => openWebKit({ display, driver, browser: miniBrowser }) : undefined,
    install: 'apt-get install webkit2gtk-driver xvfb xauth',
  },
];

/** Chromium in the same clothes, so that a job that fails in one engine can be tried in all. */
async function openChromium(executablePath: string): Promise<Tab> {
  const browser = await chromium.launch({ executablePath, args: asRoot() });
  const page = await browser.newPage();
  const heard: string[] = [];
  page.on('pageerror', (error) => heard.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') heard.push(message.text());
  });
  return {
    open: async (address) => void (await page.goto(address, { waitUntil: 'load' })),
    run: (expression) => page.evaluate(`(${expression}) ?? null`),
    act: async (sources) => {
      for (const { actions } of sources as readonly { actions: readonly Action[] }[])
        for (const action of actions) await doIn(action);
    },
    troubles: () => heard.splice(0),
    close: () => browser.close(),
  };

  async function doIn({ type, value = '', x = 0, y = 0 }: Action): Promise<void> {
    if (type === 'pointerMove') await page.mouse.move(x, y);
    if (type === 'pointerDown') await page.mouse.down();
    if (type === 'pointerUp') await page.mouse.up();
    if (type === 'keyDown') await page.keyboard.press(value === '\uE004' ? 'Tab' : value);
  }
}

interface Action {
  readonly type: string;
  readonly value?: string;
  readonly x?: number;
  readonly y?: number;
}
