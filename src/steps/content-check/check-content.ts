/** Reads all of content/ and gives everything that is wrong with it, in one run. */
import { existsSync } from 'node:fs';
import { lstat, readdir, readFile } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';
import { kindOf } from '../../schemas/kinds.ts';
import { chosenShop, demoShop, places, shopFile, shopFolder } from '../../schemas/places.ts';
import { shop as shopSchema } from '../../schemas/shop.ts';
import { listFiles } from '../support/files.ts';
import { isLeftOut, leftOutBy } from '../support/shop-says.ts';
import { localDay } from '../support/local-day.ts';
import { acrossFiles } from './across-files.ts';
import { bodyProblems } from './body-problems.ts';
import { readContentFile, type ContentFile } from './content-file.ts';
import { customerProblems } from './customer-problems.ts';
import type { KnownTexts } from './known-texts.ts';
import { libraryOf, type Known } from './library.ts';
import { isPicture, pictureFileProblems } from './pictures.ts';
import { presetProblems } from './preset-problems.ts';
import type { Problem } from './problem.ts';
import { referenceProblems } from './references.ts';
import { schemaProblems } from './schema-problems.ts';
import { isShopsOwn, shopProblems } from './shop-problems.ts';

/** @param today the day that no review may lie after, as YYYY-MM-DD */
export async function checkContent(
  projectFolder: string,
  known: Known,
  today = localDay(),
): Promise<readonly Problem[]> {
  return (await checkedFiles(projectFolder, known, today)).problems;
}

export interface Checked {
  readonly problems: readonly Problem[];
  /** The articles and records that make up the site, each read once. */
  readonly files: readonly ContentFile[];
  /** Also what is replaced, and drafts that replace nothing yet, place by place. */
  readonly all: readonly ContentFile[];
}

/** @param texts what earlier builds have read */
export async function checkedFiles(
  projectFolder: string,
  known: Known,
  today = localDay(),
  texts?: KnownTexts,
): Promise<Checked> {
  const { files: whole, all, shown, shop } = await readAll(projectFolder, texts);
  const unwanted = leftOutBy(shop?.yaml.data);
  // What is left out may still be named: links to it go when the site is built.
  const library = libraryOf(whole, known, await pictures(projectFolder), unwanted);
  const files = published(whole, unwanted);
  const each = files.flatMap((file) => {
    const schema = schemaOf(file);
    if (!schema) return [];
    if (!isReadable(file)) return file.unreadable ? [file.unreadable] : file.yaml.problems;
    return [
      ...schemaProblems(file.path, file.yaml, schema),
      ...referenceProblems(file, library),
      ...bodyProblems(file, library),
      ...customerProblems(file),
    ];
  });
  const articles = files.filter((file) => file.ending === 'mdx' && schemaOf(file) && isReadable(file));
  const presets = await presetProblems(articles);
  const linked = await linkProblems(projectFolder);
  const across = acrossFiles(files, library, today);
  return {
    problems: [...each, ...presets, ...linked, ...shown, ...across, ...shopProblems(projectFolder, shop, whole)],
    files,
    all,
  };
}

/** What its fields must be. A wrong folder or ending is told elsewhere; there its fields would only add noise. */
function schemaOf(file: ContentFile) {
  if (file.path === shopFile) return shopSchema;
  const kind = file.place === '' ? undefined : kindOf(file.folder);
  return kind?.ending === file.ending ? kind.schema : undefined;
}

const isReadable = ({ unreadable, yaml }: ContentFile): boolean => !unreadable && yaml.problems.length === 0;

/** A link stands for a file that may be elsewhere tomorrow, and a walk passes it over: an article behind one is not there. */
async function linkProblems(projectFolder: string): Promise<Problem[]> {
  const lists = await Promise.all(
    places.map(async (place) => {
      const start = join(projectFolder, place);
      if (!existsSync(start)) return [];
      const entries = await readdir(start, { recursive: true, withFileTypes: true });
      return entries.filter((e) => e.isSymbolicLink()).map((e) => relative(projectFolder, join(e.parentPath, e.name)));
    }),
  );
  return lists.flat().map((file) => ({
    file: file.split(sep).join('/'),
    line: 1,
    field: 'file',
    got: 'a link to a file or folder',
    allowed: 'the file itself: copy it here',
  }));
}

/** Every file an article can show. */
async function pictures(projectFolder: string): Promise<ReadonlySet<string>> {
  const folders = ['public', ...places].filter((folder) => existsSync(join(projectFolder, folder)));
  const lists = await Promise.all(
    folders.map(async (folder) => (await listFiles(join(projectFolder, folder))).map((f) => `${folder}/${f}`)),
  );
  return new Set(lists.flat());
}

/** What the shop replaces is no longer part of the site; a draft replaces nothing yet. */
function withoutReplaced(files: readonly ContentFile[]): ContentFile[] {
  const rank = (file: ContentFile) => (file.draft ? -1 : places.indexOf(file.place));
  const nameOf = (file: ContentFile) => `${file.folder}/${file.id}.${file.ending}`;
  const highest = new Map<string, number>();
  for (const file of files) highest.set(nameOf(file), Math.max(rank(file), highest.get(nameOf(file)) ?? -1));
  return files.filter((file) => file.place === '' || rank(file) === highest.get(nameOf(file)));
}

/** What may stand in content/: the knowledge, the shop, and a demo shop that is not built today. */
const placeNames = [...places, demoShop, chosenShop].map((place) => place.slice('content/'.length));

/** From `folder`, with forward slashes; the place of a chosen shop is a link, which a walk would pass over. */
async function filesBelow(folder: string, start: string): Promise<string[]> {
  if (!existsSync(start)) return [];
  const from = relative(folder, start).split(sep).join('/');
  const single = (await lstat(start)).isFile();
  return single ? [from] : (await listFiles(start)).map((f) => `${from}/${f}`);
}

/** The articles and records that make up the site. */
export async function readContent(projectFolder: string): Promise<ContentFile[]> {
  const { files, shop } = await readAll(projectFolder);
  return published(files, leftOutBy(shop?.yaml.data));
}

const published = (files: readonly ContentFile[], unwanted: ReadonlySet<string>): ContentFile[] =>
  files.filter((file) => file.place === shopFolder || !isLeftOut(unwanted, file.folder, file.id));

interface Read {
  /** All but what the shop replaces. */
  readonly files: ContentFile[];
  readonly all: ContentFile[];
  /** What is wrong with the pictures beside them. */
  readonly shown: Problem[];
  /** shop.yaml, where there is one. */
  readonly shop: ContentFile | undefined;
}

async function readAll(projectFolder: string, texts?: KnownTexts): Promise<Read> {
  const folder = join(projectFolder, 'content');
  if (!existsSync(folder)) return { files: [], all: [], shown: [], shop: undefined };
  const beside = (await readdir(folder)).filter((name) => !placeNames.includes(name)).map((name) => join(folder, name));
  const lists = await Promise.all(
    [...places.map((place) => join(projectFolder, place)), ...beside].map((start) => filesBelow(folder, start)),
  );
  const names = lists.flat().filter((f) => !f.split('/').some((part) => part.startsWith('.')));
  const read = await Promise.all(
    names.map(async (name) => {
      const bytes = await readFile(join(folder, name));
      return { name, bytes, file: readContentFile(`content/${name}`, bytes, texts) };
    }),
  );
  const shop = read.find((r) => r.file.path === shopFile)?.file;
  // The shop's own files beside shop.yaml have rules of their own.
  const articles = read.filter((r) => !isShopsOwn(r.file, shop));
  const asPicture = ({ name, file }: (typeof read)[number]) => file.place !== '' && isPicture(name);
  const all = articles.filter((r) => !asPicture(r)).map((r) => r.file);
  return {
    files: withoutReplaced(all),
    all,
    shown: articles.filter(asPicture).flatMap((r) => pictureFileProblems(r.file.path, r.file.folder, r.bytes)),
    shop,
  };
}
