/**
 * Every page has one stylesheet of its kind, named in its head: what Astro linked there, what parts of the page brought
 * with them further down, and <style> blocks, in this order; before it the faces, which are the same for the whole site,
 * after it the rules its own style attributes became, if it has any. So few files are one wait before the first paint,
 * and the policy needs no exception for styles.
 */
import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Edit } from './edits.ts';
import type { HashedFiles } from './hashed-files.ts';
import type { Page, PageElement } from './parse-page.ts';
import { fileFor, type FileSet } from './site-paths.ts';

const aFace = /@font-face\s*\{[^}]*\}/g;

export class PageSheets {
  readonly #added: HashedFiles;
  readonly #files: FileSet;
  readonly #read = new Map<string, Promise<string>>();
  /** What the sheets of a page hold together -> the files it became. */
  readonly #made = new Map<string, Promise<readonly string[]>>();

  constructor(added: HashedFiles, files: FileSet) {
    this.#added = added;
    this.#files = files;
  }

  async forPage(page: Page, address: (file: string) => string): Promise<Edit[]> {
    const head = headEnd(page);
    const early = page.elements.filter((e) => isSheet(e) && e.start < head);
    const late = page.elements.filter((e) => isSheet(e) && e.start > head);
    const styled = page.elements.filter((e) => e.attributes['style'] !== undefined);
    const edits = styled.flatMap(asClass);
    const rules = new Set(styled.map((e) => ruleOf(e.attributes['style'] ?? '')).filter((rule) => rule !== ''));
    const texts = await Promise.all([...early, ...late].map(async (e) => await this.#textOf(page, e)));
    const sheets = [...(await this.#filesOf([...new Set(texts)].join('\n')))];
    if (rules.size > 0) sheets.push(await this.#added.add('own', 'css', [...rules].sort().join('\n')));
    if (sheets.length === 0) return edits;
    const link = sheets.map((file) => `<link rel="stylesheet" href="${address(file)}">`).join('');
    for (const e of [...early, ...late]) edits.push({ start: e.start, end: e.end, text: e === early[0] ? link : '' });
    if (early.length === 0) edits.push({ start: head, end: head, text: link });
    return edits;
  }

  /** The files of what pages have in common, the same text made into files once. */
  #filesOf(css: string): Promise<readonly string[]> {
    const made = this.#made.get(css) ?? this.#write(css);
    this.#made.set(css, made);
    return made;
  }

  async #write(css: string): Promise<readonly string[]> {
    const parts = [
      ['faces', (css.match(aFace) ?? []).join('\n')],
      ['look', css.replaceAll(aFace, '').trim()],
    ] as const;
    return Promise.all(
      parts.filter(([, part]) => part !== '').map(([name, part]) => this.#added.add(name, 'css', part)),
    );
  }

  #textOf(page: Page, e: PageElement): string | Promise<string> {
    if (e.tag === 'style') return e.text;
    const href = e.attributes['href'] ?? '';
    const file = fileFor(href, this.#files);
    if (file === undefined) throw new Error(`${page.file} uses ${href}, and no such file was built.`);
    const text = this.#read.get(file) ?? readFile(join(this.#added.dist, file), 'utf8').then((css) => css.trimEnd());
    this.#read.set(file, text);
    return text;
  }
}

/** The name of the class that stands for a style attribute; nothing for an empty one. */
function nameOf(style: string): string {
  return style.trim() === '' ? '' : `s${createHash('sha256').update(style).digest('hex').slice(0, 6)}`;
}

/** Doubled up so that it outranks the sheet, as the attribute did. */
function ruleOf(style: string): string {
  const name = nameOf(style);
  return name === '' ? '' : `.${name}.${name}.${name}{${style}}`;
}

function asClass({ attributes, attributeAt }: PageElement): Edit[] {
  const name = nameOf(attributes['style'] ?? '');
  const at = attributeAt['style'];
  if (!at) return [];
  const present = attributes['class'];
  const classAt = attributeAt['class'];
  if (present === undefined || !classAt) return [{ ...at, text: name === '' ? '' : `class="${name}"` }];
  if (name === '') return [{ ...at, text: '' }];
  const both = `${present} ${name}`.trim().replaceAll('&', '&amp;').replaceAll('"', '&quot;');
  return [
    { ...at, text: '' },
    { ...classAt, text: `class="${both}"` },
  ];
}

/** What becomes part of a page's one sheet. */
export function isSheet(e: PageElement): boolean {
  return e.tag === 'style' || (e.tag === 'link' && e.attributes['rel'] === 'stylesheet');
}

function headEnd(page: Page): number {
  return page.html.indexOf('</head>');
}
