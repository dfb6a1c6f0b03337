/**
 * The program of a site: what the bundler makes of src/, for making pages and for the reader's browser. It holds no word
 * of the articles, and so is the same until src/, public/, the packages, the shop's settings or its mark change. It is
 * kept, and a build that finds it there bundles nothing.
 */
import { createHash } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import { mkdir, readdir, readFile, rename, rm, stat, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import process from 'node:process';
import { shopFile, shopFolder } from '../../schemas/places.ts';
import { shownPictures } from '../support/shown-pictures.ts';
import { isRunning } from '../support/fresh-folder.ts';
import { listFiles } from '../support/files.ts';

export interface Program {
  readonly folder: string;
  /** What makes pages, below `server`. */
  readonly entry: string;
}

export const serverFolder = 'server';
export const clientFolder = 'client';
const notesFile = 'notes.json';
/** Programs of so many shops or states of the source are kept. */
const keptAtMost = 3;

/** A program that is being made; what a build that was stopped left there is cleared away by the next. */
const making = '.making-';

export const keptPrograms = (project: string): string => join(project, 'node_modules/.cache/almanac-program');

/** Read or bundled by what makes the program, besides src/ and public/. `.package-lock.json` is what is installed. */
const single = [
  'package.json',
  'package-lock.json',
  'node_modules/.package-lock.json',
  'astro.config.mjs',
  'tsconfig.json',
  shopFile,
];

/** Two builds with the same key have the same program. */
export async function programKey(project: string): Promise<string> {
  const hash = createHash('sha256');
  hash.update(JSON.stringify([project, shopFolder, process.version, process.platform, process.arch]));
  const beside = (await readdir(project)).filter((name) => name.startsWith('.env'));
  const inside = await Promise.all(
    ['src', 'public'].map(async (folder) =>
      existsSync(join(project, folder)) ? (await listFiles(join(project, folder))).map((f) => `${folder}/${f}`) : [],
    ),
  );
  for (const name of [
    ...single,
    ...beside,
    ...inside.flat(),
    ...(await drawings(project)),
    ...(await shownPictures(project, false)),
  ]) {
    const path = join(project, name);
    // At once: a thousand small files wait longer for each other than the disk takes for them.
    const bytes = existsSync(path) ? readFileSync(path) : undefined;
    hash.update(`\0${name}\0${bytes?.length ?? 'none'}\0`).update(bytes ?? '');
  }
  return hash.digest('hex').slice(0, 24);
}

/**
 * Drawings beside shop.yaml. One may be its mark, whose sizes are drawn where the program is made; to learn which, YAML
 * would have to be loaded before the bundler can begin.
 */
async function drawings(project: string): Promise<readonly string[]> {
  const names = existsSync(join(project, shopFolder)) ? await readdir(join(project, shopFolder)) : [];
  return names
    .filter((name) => /\.(?:svg|png)$/.test(name))
    .map((name) => `${shopFolder}/${name}`)
    .sort();
}

/** The program kept under a key, if there is one. */
export async function keptProgram(project: string, key: string): Promise<Program | undefined> {
  const folder = join(keptPrograms(project), key);
  if (!existsSync(join(folder, notesFile))) return undefined;
  const now = new Date();
  await utimes(folder, now, now);
  return { folder, ...(JSON.parse(await readFile(join(folder, notesFile), 'utf8')) as Omit<Program, 'folder'>) };
}

/** Astro's own run ends here: what it has made in `folder` is noted, so that it can be found. */
export async function noteProgram(folder: string): Promise<void> {
  const entry = (await readdir(join(folder, serverFolder))).find((name) => /^prerender-entry\..*mjs$/.test(name));
  if (entry === undefined) throw new Error('Astro has made no program for pages; src/steps/program no longer fits it.');
  await writeFile(join(folder, notesFile), JSON.stringify({ entry }));
}

/** Keeps what was made in `made` under its key; of older ones the last few stay. */
export async function keepProgram(project: string, key: string, made: string): Promise<void> {
  const all = keptPrograms(project);
  await mkdir(all, { recursive: true });
  // Another build may have kept the same one meanwhile, and be reading it.
  if (existsSync(join(all, key, notesFile))) return;
  await rm(join(all, key), { recursive: true, force: true });
  await rename(made, join(all, key));
  const others = (await readdir(all)).filter((name) => name !== key && !name.startsWith(making));
  const aged = await Promise.all(others.map(async (name) => ({ name, age: (await stat(join(all, name))).mtimeMs })));
  for (const { name } of aged.sort((a, b) => b.age - a.age).slice(keptAtMost - 1))
    await rm(join(all, name), { recursive: true, force: true });
}

/** An empty folder to make a program in. */
export async function placeToMake(project: string): Promise<string> {
  const all = keptPrograms(project);
  await mkdir(all, { recursive: true });
  for (const name of (await readdir(all)).filter((one) => one.startsWith(making)))
    if (!isRunning(Number(name.slice(making.length)))) await rm(join(all, name), { recursive: true, force: true });
  const folder = join(all, `${making}${process.pid}`);
  await rm(folder, { recursive: true, force: true });
  await mkdir(folder);
  return folder;
}
