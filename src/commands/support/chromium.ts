/** Finds a Chromium for the tests and pictures that need a browser. */
import { accessSync, constants, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { run } from './command.ts';

const names = ['chromium', 'chromium-browser', 'chrome'];
const usualPlaces = [
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Chromium\\Application\\chrome.exe',
];

export function findChromium(): string | undefined {
  const named = process.env['CHROMIUM_PATH'];
  // A wrong name is told, not passed over for another browser.
  if (named) return isProgram(named) ? named : undefined;
  return onPath(names) ?? usualPlaces.find(isProgram);
}

function onPath(wanted: readonly string[]): string | undefined {
  const folders = (process.env['PATH'] ?? '').split(delimiter).filter((f) => f !== '');
  const ending = process.platform === 'win32' ? '.exe' : '';
  return folders.flatMap((folder) => wanted.map((name) => join(folder, name + ending))).find(isProgram);
}

function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
}

/** What to do when none was found. */
export function chromiumHelp(): string {
  const named = process.env['CHROMIUM_PATH'];
  if (named) return `CHROMIUM_PATH names ${named}, which is no program that can be started.`;
  return `The browser tests need Chromium, and none was found.
Install it (Debian: apt-get install chromium), or name the program of any browser built on it
in CHROMIUM_PATH, then run the command again. On a Debian machine of your own, as root,
"npm test -- --install" installs it first.`;
}

/** `asked`: whether this machine may be changed. Only then, and only on Debian as root, Chromium is installed. */
export async function findOrInstallChromium(asked: boolean): Promise<string | undefined> {
  const found = findChromium();
  const able = process.platform === 'linux' && process.getuid?.() === 0 && onPath(['apt-get']);
  if (found || !asked || !able || process.env['CHROMIUM_PATH']) return found;
  console.log('No Chromium found. As asked, the Debian package "chromium" is installed on this machine now.');
  const quiet = { DEBIAN_FRONTEND: 'noninteractive' };
  await run('apt-get', ['update', '-qq'], quiet);
  await run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium'], quiet);
  return findChromium();
}
