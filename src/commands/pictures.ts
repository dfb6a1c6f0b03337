/** npm run pictures: takes the pictures in README.md from the built site, into .readme/. */
import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { chromiumHelp, findChromium } from './support/chromium.ts';
import { buildSite, projectFolder } from './support/command.ts';
import { serveFolder } from './support/serve.ts';

interface Picture {
  readonly name: string;
  readonly page: string;
  readonly viewport: { readonly width: number; readonly height: number };
  readonly wake?: string;
  readonly dark?: boolean;
}

const laptop = { width: 1366, height: 900 };
const phone = { width: 390, height: 844 };
const pictures: readonly Picture[] = [
  { name: 'home', page: 'index.html', viewport: laptop },
  { name: 'calculator', page: 'calculators/belt-tension.html', viewport: laptop, wake: 'section.calc' },
  { name: 'guide-phone', page: 'guides/cutting-wet.html', viewport: phone, dark: true },
];

const executablePath = findChromium();
if (!executablePath) {
  console.error(chromiumHelp());
  process.exit(1);
}
const code = await buildSite();
if (code !== 0) process.exit(code);

const folder = join(projectFolder, '.readme');
await mkdir(folder, { recursive: true });
const serving = await serveFolder(join(projectFolder, 'dist'));
const browser = await chromium.launch({ executablePath, args: process.getuid?.() === 0 ? ['--no-sandbox'] : [] });
for (const { name, page: file, viewport, wake, dark } of pictures) {
  const context = await browser.newContext({
    viewport,
    colorScheme: dark ? 'dark' : 'light',
    reducedMotion: 'reduce',
    serviceWorkers: 'block',
  });
  const page = await context.newPage();
  await page.goto(serving.address + file);
  if (wake) {
    // A calculator comes alive when it is reached.
    await page.locator(wake).first().dispatchEvent('pointerover');
    await page.locator(`${wake}[data-live=yes]`).first().waitFor();
  }
  await page.evaluate(() => document.fonts.ready);
  await page.screenshot({ path: join(folder, `${name}.png`) });
  await context.close();
  console.log(`.readme/${name}.png`);
}
await browser.close();
await serving.close();
