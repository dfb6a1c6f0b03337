/** Writes licenses.txt: the project's own license, then license and notices of every library readers get with the site. */
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { findPackageJSON } from 'node:module';
import { dirname, join } from 'node:path';
import { listFiles } from '../support/files.ts';

/**
 * Shipped, though no module of Vite's: Astro's island runtime stands inline, the search engine is bundled apart, and
 * the faces are files.
 */
const besides = ['astro', 'pagefind', '@fontsource-variable/bitter', '@fontsource/b612-mono'];
const texts = /^(?:licen[sc]e|notice|copying)(?:\.(?:md|txt))?$/i;

export async function addLicenses(dist: string, packages: Iterable<string>): Promise<void> {
  const own = await readFile(new URL('license.txt', import.meta.url), 'utf8');
  const folders = new Set([...packages, ...besides.map(folderOf)]);
  const parts = await Promise.all([...folders].map(partFor));
  const text = [`Bench Almanac\n\n${own.trim()}`, ...parts.sort()].join(`\n\n${'='.repeat(80)}\n\n`);
  await writeFile(join(dist, 'licenses.txt'), `${text}\n`);
}

function folderOf(name: string): string {
  const found = findPackageJSON(name, import.meta.url);
  if (found === undefined) throw new Error(`The package ${name} is not installed.`);
  return dirname(found);
}

/** Files at the top of the package, or in a folder of that name. */
async function licenseFiles(folder: string): Promise<string[]> {
  const top = (await readdir(folder, { withFileTypes: true })).filter((e) => texts.test(e.name));
  const inside = top.filter((e) => e.isDirectory()).map((e) => e.name);
  const files = await Promise.all(
    inside.map(async (name) => (await listFiles(join(folder, name))).map((f) => `${name}/${f}`)),
  );
  return [...top.filter((e) => e.isFile()).map((e) => e.name), ...files.flat()].sort();
}

async function partFor(folder: string): Promise<string> {
  const about = JSON.parse(await readFile(join(folder, 'package.json'), 'utf8')) as Record<string, unknown>;
  const files = await licenseFiles(folder);
  if (files.length === 0)
    throw new Error(`${String(about['name'])} is sent to readers, and its folder holds no license text to send along.`);
  const found = await Promise.all(files.map((file) => readFile(join(folder, file), 'utf8')));
  const head = `${String(about['name'])} ${String(about['version'])} (${String(about['license'])})`;
  return [head, ...found.map((text) => text.trim())].join('\n\n');
}
