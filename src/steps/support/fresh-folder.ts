/**
 * A build is made in a fresh folder beside the one it is for and takes that one's place only when it is whole.
 * A build that fails or is interrupted leaves yesterday's site as it was.
 */
import { existsSync, rmSync } from 'node:fs';
import { readdir, rename, rm } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import process from 'node:process';

/** ".dist.new-4711", made by process 4711; ".dist.old-4711" for the blink in which the two change places. */
const madeBy = (folder: string, kind: 'new' | 'old', pid: number | string = process.pid): string =>
  join(dirname(folder), `.${basename(folder)}.${kind}-${pid}`);

export class FreshFolder {
  readonly path: string;
  readonly #wanted: string;
  readonly #drop = () => rmSync(this.path, { recursive: true, force: true });

  private constructor(wanted: string) {
    this.#wanted = wanted;
    this.path = madeBy(wanted, 'new');
    process.on('exit', this.#drop);
  }

  /** For the site that will stand in `wanted`. What builds before this one left lying about is cleared away. */
  static async beside(wanted: string): Promise<FreshFolder> {
    const folder = resolve(wanted);
    await clearLeftovers(folder);
    return new FreshFolder(folder);
  }

  async takePlace(): Promise<void> {
    const old = madeBy(this.#wanted, 'old');
    if (existsSync(this.#wanted)) await rename(this.#wanted, old);
    try {
      await rename(this.path, this.#wanted);
    } catch (reason) {
      if (existsSync(old)) await rename(old, this.#wanted);
      throw reason;
    }
    process.off('exit', this.#drop);
    await rm(old, { recursive: true, force: true });
  }
}

async function clearLeftovers(folder: string): Promise<void> {
  if (!existsSync(dirname(folder))) return;
  const pattern = /^\.(.+)\.(new|old)-(\d+)$/;
  for (const name of await readdir(dirname(folder))) {
    const [, site, kind, pid] = pattern.exec(name) ?? [];
    if (site !== basename(folder) || isRunning(Number(pid))) continue;
    const left = join(dirname(folder), name);
    // Stopped in the blink between the two moves: the old site is the only whole one.
    if (kind === 'old' && !existsSync(folder)) await rename(left, folder);
    else await rm(left, { recursive: true, force: true });
  }
}

export function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (reason) {
    return (reason as NodeJS.ErrnoException).code === 'EPERM';
  }
}
