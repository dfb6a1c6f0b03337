/**
 * Files that are kept for the next build, or carried away, are there whole or not at all: what is being written bears
 * the number of its writer at the end of its name, and takes its own name last.
 */
import { renameSync, rmSync, writeFileSync } from 'node:fs';
import process from 'node:process';
import { isRunning } from './fresh-folder.ts';

/** The name of a file or folder while it is being made. */
export const unfinished = (path: string): string => `${path}.${process.pid}`;

export function writeWhole(path: string, content: string | Uint8Array): void {
  try {
    writeFileSync(unfinished(path), content);
    renameSync(unfinished(path), path);
  } catch (reason) {
    // On a full disk half of it would take what room there is.
    rmSync(unfinished(path), { force: true });
    throw reason;
  }
}

/** Whether something was left by a build that was stopped. */
export function isAbandoned(name: string): boolean {
  const writer = /\.(\d+)$/.exec(name)?.[1];
  return writer !== undefined && !isRunning(Number(writer));
}
