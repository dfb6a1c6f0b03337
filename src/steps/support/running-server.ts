/** Which server for writing runs on this project: told by a file that stands while it does. */
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import process from 'node:process';
import { isRunning } from './fresh-folder.ts';

export interface Running {
  /** Its process. */
  readonly pid: number;
  /** "http://localhost:4321/" */
  readonly address: string;
  /** The shop as whoever started it named it. */
  readonly shop: string;
  /** Its folder, resolved; nothing for the demo's. */
  readonly folder?: string;
}

/** From the project's folder. */
export const runningFile = '.astro/writing.json';

/** The server that runs beside this process; what one left that ended badly does not count. */
export function runningServer(projectFolder: string): Running | undefined {
  try {
    const said = JSON.parse(readFileSync(join(projectFolder, runningFile), 'utf8')) as Running;
    return said.pid !== process.pid && isRunning(said.pid) ? said : undefined;
  } catch {
    return undefined;
  }
}

/** @returns takes the note away again */
export function noteRunning(projectFolder: string, running: Running): () => void {
  const file = join(projectFolder, runningFile);
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, JSON.stringify(running));
  return () => rmSync(file, { force: true });
}

export const alreadyRuns = ({ address, shop, pid }: Running): string =>
  `"npm run dev" runs already, for ${shop}: ${address}
Look there, or stop it first, with Ctrl+C in its window. Where no such window is open, end process ${pid} or delete ${runningFile}.`;
