/** Finds a Chromium for the tests and pictures that need a browser. */
import { accessSync, constants, existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { run } from './command.ts';

const names = ['chromium', 'chromium-browser', 'chrome'];
const usualPlaces = [
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Chromium\\Application\\chrome.exe',
];

export function findChromium(): string | undefined {
  const named = process.env['CHROMIUM_PATH'];
  if (named && existsSync(named)) return named;
  return onPath(names) ?? usualPlaces.find((p) => existsSync(p));
}

function onPath(wanted: readonly string[]): string | undefined {
  const folders = (process.env['PATH'] ?? '').split(delimiter).filter((f) => f !== '');
  const ending = process.platform === 'win32' ? '.exe' : '';
  return folders.flatMap((folder) => wanted.map((name) => join(folder, name + ending))).find(isProgram);
}

function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

export const chromiumHelp = `The browser tests need Chromium, and none was found.
Install it (Debian: apt-get install chromium), or name the program of any browser built on it
in CHROMIUM_PATH, then run the command again.`;

/** On a bare Debian machine, as in a fresh container, installs it; elsewhere only looks. */
export async function findOrInstallChromium(): Promise<string | undefined> {
  const found = findChromium();
  if (found || process.platform !== 'linux' || process.getuid?.() !== 0 || !onPath(['apt-get'])) return found;
  console.log('No Chromium found; installing the Debian package.');
  const quiet = { DEBIAN_FRONTEND: 'noninteractive' };
  await run('apt-get', ['update', '-qq'], quiet);
  await run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium'], quiet);
  return findChromium();
}
