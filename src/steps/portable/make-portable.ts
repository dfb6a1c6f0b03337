/**
 * Turns what Astro built into a folder that works from a server, from a subfolder, installed
 * and opened from disk: relative links, classic scripts, nothing inline, one fixed policy.
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { copyFile, readFile, rm, writeFile } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { ClassicScripts } from './classic-scripts.ts';
import { relativeCss } from './css.ts';
import { listFiles } from '../support/files.ts';
import { BrokenLinks } from './broken-links.ts';
import { applyEdits, type Edit } from './edits.ts';
import { HashedFiles } from './hashed-files.ts';
import { Islands } from './islands.ts';
import { lostAnchors, relink, type Anchor, type LinkProblem, type SiteFiles } from './links.ts';
import { offlinePage } from './offline-page.ts';
import { PageScripts } from './page-scripts.ts';
import { isSheet, PageSheets } from './page-sheet.ts';
import { bringBack, madeFolder, namesIn } from './made-files.ts';
import { parsePage, type Page, type PageElement } from './parse-page.ts';
import { policyTag } from './policy.ts';
import { relativePath, rootOf, type FileSet } from './site-paths.ts';

/** @param leftOut pages the shop leaves out, by file */
export async function makePortable(dist: string, base: string, leftOut: FileSet = new Set()): Promise<void> {
  await addOfflinePage(dist);
  const files = await listFiles(dist);
  const site = new PortableSite(dist, { files: new Set(files), base, leftOut });
  // One page at a time: of each only its ids and its links to places stay in memory, however large the site.
  for (const file of files.filter((f) => f.endsWith('.html'))) {
    // Read and written at once: thousands of files wait longer for each other than the disk takes for them.
    const html = readFileSync(join(dist, file), 'utf8');
    writeFileSync(join(dist, file), (await site.page(file, html)).html);
  }
  await site.finish();
}

/** What a page has for links, and where its own lead inside the site. */
export interface PageLinks {
  readonly ids: readonly string[];
  readonly anchors: readonly Anchor[];
}

export interface PortablePage {
  readonly html: string;
  readonly links: PageLinks;
  /** Made files it names, or whose scripts it fetches when they are reached. */
  readonly names: readonly string[];
}

/** Takes the pages of a site one after the other. What all of them share is written at the end. */
export class PortableSite {
  readonly #dist: string;
  readonly #site: SiteFiles;
  readonly #scripts: ClassicScripts;
  readonly #tools: Tools;
  readonly #ids = new Map<string, ReadonlySet<string>>();
  readonly #anchors: Anchor[] = [];
  readonly #problems: LinkProblem[] = [];
  /** Made files that pages of an earlier build name. */
  readonly #named = new Set<string>();

  /** @param site its files are those of the whole site, pages that are yet to come as well */
  constructor(dist: string, site: SiteFiles) {
    this.#dist = dist;
    this.#site = site;
    this.#scripts = new ClassicScripts(join(dist, madeFolder));
    const added = new HashedFiles(dist);
    this.#tools = {
      added,
      islands: new Islands(this.#scripts, added),
      scripts: new PageScripts(this.#scripts, added),
      sheets: new PageSheets(added, site.files),
    };
  }

  /** The page as it is published. */
  async page(file: string, html: string): Promise<PortablePage> {
    const page = parsePage(file, html);
    const { anchors, problems, edits } = relink(page, this.#site, isReplaced);
    this.#ids.set(file, page.ids);
    this.#anchors.push(...anchors);
    this.#problems.push(...problems);
    const own = await pageEdits(page, this.#site, this.#tools);
    const finished = applyEdits(html, [...edits, ...own.edits]);
    return {
      html: finished,
      links: { ids: [...page.ids], anchors },
      names: [...new Set([...namesIn(finished), ...own.later])],
    };
  }

  /** A page that was finished by an earlier build of the same program, with the same files in its site. */
  kept(file: string, { links, names }: Omit<PortablePage, 'html'>): void {
    this.#ids.set(file, new Set(links.ids));
    this.#anchors.push(...links.anchors);
    for (const name of names) this.#named.add(name);
  }

  /** @param named where the made files are that kept pages name */
  async finish(named?: string): Promise<void> {
    const problems = [...this.#problems, ...lostAnchors(this.#anchors, this.#ids)];
    if (problems.length > 0) throw new BrokenLinks(problems);
    const scripts = await this.#scripts.writeChunks();
    const there = new Set([...scripts, ...[...this.#tools.added.written].map((file) => basename(file))]);
    const back = named === undefined ? [] : await bringBack(this.#named, named, join(this.#dist, madeFolder), there);
    await dropModules(this.#dist, [...this.#site.files], new Set([...scripts, ...back]));
    // Their text stands in the pages' own sheets.
    await Promise.all([...this.#site.files].filter(isAstroSheet).map((f) => rm(join(this.#dist, f))));
    await makeCssRelative(this.#dist);
  }
}

async function addOfflinePage(dist: string): Promise<void> {
  const page = join(dist, offlinePage.like);
  if (existsSync(page)) await copyFile(page, join(dist, offlinePage.file));
}

interface Tools {
  readonly added: HashedFiles;
  readonly islands: Islands;
  readonly scripts: PageScripts;
  readonly sheets: PageSheets;
}

interface OwnEdits {
  readonly edits: readonly Edit[];
  /** Scripts that come when something on the page is reached. */
  readonly later: readonly string[];
}

async function pageEdits(page: Page, { base }: SiteFiles, tools: Tools): Promise<OwnEdits> {
  const address = (file: string) => (page.file === '404.html' ? base + file : relativePath(page.file, file));
  const islands = await tools.islands.forPage(page);
  const edits: Edit[] = [
    ...(islands?.edits ?? []),
    ...(await tools.scripts.forPage(page, islands?.taken ?? new Set(), address)),
    ...(await tools.sheets.forPage(page, address)),
  ];
  for (const e of page.elements) {
    if (isPreload(e)) edits.push({ start: e.start, end: e.end, text: '' });
    if (e.tag === 'html') edits.push(rootEdit(e, page.file === '404.html' ? base : rootOf(page.file)));
    if (e.tag === 'head') {
      edits.push({ start: e.startTagEnd, end: e.startTagEnd, text: policyTag });
      const end = page.html.indexOf('</head>', e.startTagEnd);
      const tags = islands?.files.map((file) => `<script defer src="${address(file)}"></script>`) ?? [];
      if (tags.length > 0) edits.push({ start: end, end, text: tags.join('') });
    }
  }
  return { edits, later: islands?.later ?? [] };
}

/** Scripts learn from <html data-root> where the top folder is. */
function rootEdit(html: PageElement, root: string): Edit {
  const present = html.attributeAt['data-root'];
  return present
    ? { ...present, text: `data-root="${root}"` }
    : { start: html.startTagEnd - 1, end: html.startTagEnd - 1, text: ` data-root="${root}"` };
}

function isPreload(e: PageElement): boolean {
  return e.tag === 'link' && e.attributes['rel'] === 'modulepreload';
}

/** Elements another part of this step writes anew. */
function isReplaced(e: PageElement): boolean {
  return isSheet(e) || isPreload(e) || (e.tag === 'script' && e.attributes['type'] === 'module');
}

function isAstroSheet(file: string): boolean {
  return file.startsWith(`${madeFolder}/`) && file.endsWith('.css');
}

async function dropModules(dist: string, before: readonly string[], keep: ReadonlySet<string>): Promise<void> {
  const modules = before.filter(
    (f) => f.startsWith(`${madeFolder}/`) && f.endsWith('.js') && !keep.has(f.slice(madeFolder.length + 1)),
  );
  await Promise.all(modules.map((f) => rm(join(dist, f))));
}

async function makeCssRelative(dist: string): Promise<void> {
  const files = await listFiles(dist);
  const all = new Set(files);
  for (const file of files.filter((f) => f.endsWith('.css'))) {
    const css = await readFile(join(dist, file), 'utf8');
    const relative = relativeCss(file, css, all);
    if (relative !== css) await writeFile(join(dist, file), relative);
  }
}
