/**
 * Puts a new engine and knowledge in the place of what is there. What stood there before is kept in before-update/, so
 * that nothing anybody changed is lost; the shop, what was built and what git and npm keep are never touched.
 */
import {
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { readFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { demoShop } from '../../schemas/places.ts';
import { listFiles } from '../../steps/support/files.ts';
import { readTar } from './tar.ts';

/** Where what stood here before is kept. */
export const keptIn = 'before-update';

/** Never written, never removed. */
const left = [demoShop, 'content/chosen-shop', 'node_modules', 'dist', 'packs', keptIn, '.git', '.astro'];
const isLeft = (file: string): boolean =>
  left.some((place) => file === place || file.startsWith(`${place}/`)) || file.startsWith('.dist.');

/** Here a file that the new engine no longer has goes; elsewhere it may be somebody's own. */
const engines = /^(?:src|tests|content\/knowledge)\//;

export interface Taken {
  readonly version: string;
  readonly changed: readonly string[];
  readonly added: readonly string[];
  readonly removed: readonly string[];
}

/** @param from a folder, or an archive of "git archive" @throws Error with a sentence when it holds no almanac */
export async function newFiles(from: string): Promise<ReadonlyMap<string, Buffer>> {
  const refuse = (why: string) => new Error(`${from}: ${why}. Name a folder, or an archive made by "git archive".`);
  const place = statSync(from, { throwIfNoEntry: false });
  if (!place) throw refuse('there is no such folder or file');
  let files: Map<string, Buffer>;
  if (place.isDirectory()) {
    const names = (await listAlmanac(from)).filter((name) => !isLeft(name));
    files = new Map(await Promise.all(names.map(async (name) => [name, await readFile(join(from, name))] as const)));
  } else {
    try {
      files = readTar(readFileSync(from));
    } catch (reason) {
      throw refuse(reason instanceof Error ? reason.message : 'it cannot be read');
    }
  }
  const whole = ['package.json', 'package-lock.json', 'astro.config.mjs', 'src/schemas/shop.ts'];
  const missing = whole.find((name) => !files.has(name));
  if (missing !== undefined) throw refuse(`it holds no ${missing}, so it is no whole almanac`);
  return new Map([...files].filter(([name]) => !isLeft(name)));
}

/** A folder's files without wading through node_modules. */
async function listAlmanac(folder: string): Promise<string[]> {
  const tops = ['src', 'tests', 'content', 'public', '.readme'].filter((name) => existsSync(join(folder, name)));
  const lists = await Promise.all(
    tops.map(async (top) => (await listFiles(join(folder, top))).map((file) => `${top}/${file}`)),
  );
  const loose = readdirSync(folder, { withFileTypes: true }).filter((entry) => entry.isFile());
  return [...lists.flat(), ...loose.map((entry) => entry.name)];
}

/** What would change in `project`, without changing anything. */
export async function compare(project: string, files: ReadonlyMap<string, Buffer>): Promise<Taken> {
  const here = (await listAlmanac(project)).filter((name) => !isLeft(name));
  const present = new Set(here);
  const { version = '?' } = JSON.parse(files.get('package.json')?.toString('utf8') ?? '{}') as { version?: string };
  return {
    version,
    added: [...files.keys()].filter((name) => !present.has(name)).sort(),
    changed: [...files]
      .filter(([name, bytes]) => present.has(name) && !bytes.equals(readFileSync(join(project, name))))
      .map(([name]) => name)
      .sort(),
    removed: here.filter((name) => engines.test(name) && !files.has(name)).sort(),
  };
}

/** Stands from the first file an update writes until its last: what it laid aside is then all there is of the old. */
const noteIn = (project: string): string => join(project, keptIn, '.unfinished');

export const brokenOff = (project: string): boolean => existsSync(noteIn(project));

export function finish(project: string): void {
  rmSync(noteIn(project), { force: true });
}

/** Lays aside what stood here, then writes. Broken off, by a full disk for one, the next one goes on where it was. */
export function take(project: string, files: ReadonlyMap<string, Buffer>, { changed, added, removed }: Taken): void {
  const kept = join(project, keptIn);
  if (!brokenOff(project)) rmSync(kept, { recursive: true, force: true });
  for (const name of [...changed, ...removed]) {
    const aside = join(kept, name);
    if (existsSync(aside)) continue;
    mkdirSync(dirname(aside), { recursive: true });
    cpSync(join(project, name), `${aside}.part`);
    renameSync(`${aside}.part`, aside);
  }
  mkdirSync(kept, { recursive: true });
  writeFileSync(noteIn(project), '');
  for (const name of [...changed, ...added]) {
    mkdirSync(dirname(join(project, name)), { recursive: true });
    writeFileSync(join(project, name), files.get(name) ?? '');
  }
  for (const name of removed) rmSync(join(project, name));
  finish(project);
}
