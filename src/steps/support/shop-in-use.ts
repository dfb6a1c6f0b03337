/**
 * Which commands are at work on a chosen shop: each is told by a file that stands as long as it runs. All reach the
 * shop through one link, so nobody may move it under another's feet: a build would go on with another shop's files.
 */
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { isRunning } from './fresh-folder.ts';

export interface Use {
  readonly pid: number;
  /** The shop as whoever started the command named it. */
  readonly shop: string;
}

/** From the project's folder. */
export const usesFolder = '.astro/shop-in-use';

const fileOf = (projectFolder: string, pid: number): string => join(projectFolder, usesFolder, `${pid}.json`);

/** Notes that this process uses a shop, until it ends. */
export function noteUse(projectFolder: string, shop: string): void {
  const file = fileOf(projectFolder, process.pid);
  mkdirSync(join(projectFolder, usesFolder), { recursive: true });
  writeFileSync(file, JSON.stringify({ pid: process.pid, shop }));
  process.once('exit', () => rmSync(file, { force: true }));
}

/** Another process at work on a shop; what one left that was stopped hard is cleared away. */
export function useBeside(projectFolder: string): Use | undefined {
  for (const name of namesIn(join(projectFolder, usesFolder))) {
    const pid = Number.parseInt(name, 10);
    if (pid === process.pid) continue;
    const file = fileOf(projectFolder, pid);
    try {
      if (isRunning(pid)) return JSON.parse(readFileSync(file, 'utf8')) as Use;
    } catch {
      // What does not read was being written when its writer was stopped.
    }
    rmSync(file, { force: true });
  }
  return undefined;
}

function namesIn(folder: string): string[] {
  try {
    return readdirSync(folder);
  } catch {
    return [];
  }
}

export const inUse = ({ shop, pid }: Use): string =>
  `Another command is at work on ${shop}; wait until it is done, then try again. Where none is, end process ${pid} or delete ${usesFolder}.`;
