/** Finds a Chromium for the tests and pictures that need a browser. */
import { accessSync, constants, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { createInterface } from 'node:readline/promises';
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
in CHROMIUM_PATH, then run the command again. On Debian, as root, the command can install it itself:
it asks at a terminal, and "npm test -- --install" says yes beforehand, "-- --no-install" no.`;
}

/** Whether a missing Chromium may be installed: said beforehand, or asked for at a terminal. */
export type Install = 'yes' | 'no' | 'ask';

/**
 * Only on Debian as root is there something to decide. At a terminal a person is asked; where nobody can answer, as in
 * a fresh container, it is said in words before anything is changed.
 */
export async function findOrInstallChromium(install: Install): Promise<string | undefined> {
  const found = findChromium();
  const able = process.platform === 'linux' && process.getuid?.() === 0 && onPath(['apt-get']);
  if (found || !able || process.env['CHROMIUM_PATH'] || !(await agreed(install))) return found;
  console.log('No Chromium found. The Debian package "chromium" is installed on this machine now.');
  const quiet = { DEBIAN_FRONTEND: 'noninteractive' };
  await run('apt-get', ['update', '-qq'], quiet);
  await run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium'], quiet);
  return findChromium();
}

async function agreed(install: Install): Promise<boolean> {
  if (install !== 'ask' || !process.stdin.isTTY) return install !== 'no';
  const terminal = createInterface({ input: process.stdin, output: process.stdout });
  const answer = await terminal.question(
    'No Chromium found. Install the Debian package "chromium" on this machine? [y/N] ',
  );
  terminal.close();
  return /^y/i.test(answer.trim());
}
