/** Moves <style> blocks and style attributes into stylesheets, so the policy needs no exception for them. */
import { createHash } from 'node:crypto';
import type { Edit } from './edits.ts';
import type { HashedFiles } from './hashed-files.ts';
import type { Page } from './parse-page.ts';

export class PageStyles {
  readonly #files: HashedFiles;
  constructor(files: HashedFiles) {
    this.#files = files;
  }

  async forPage(page: Page, address: (file: string) => string): Promise<Edit[]> {
    const edits: Edit[] = [];
    const rules = new Map<string, string>();
    for (const element of page.elements) {
      if (element.tag === 'style') {
        const file = await this.#files.add('inline', 'css', element.text);
        edits.push({ start: element.start, end: element.end, text: `<link rel="stylesheet" href="${address(file)}">` });
      }
      const style = element.attributes['style'];
      const at = element.attributeAt['style'];
      if (style === undefined || !at) continue;
      const name = `s${createHash('sha256').update(style).digest('hex').slice(0, 6)}`;
      // Doubled up so the rule outranks the stylesheet, as the attribute did.
      if (style.trim() !== '') rules.set(name, `.${name}.${name}.${name}{${style}}`);
      edits.push(
        ...asClass(element.attributes['class'], element.attributeAt['class'], at, style.trim() === '' ? '' : name),
      );
    }
    const head = page.elements.find((e) => e.tag === 'head');
    if (rules.size > 0 && head) {
      const file = await this.#files.add(
        'styles',
        'css',
        [...rules]
          .sort()
          .map(([, rule]) => rule)
          .join('\n'),
      );
      const end = page.html.indexOf('</head>', head.startTagEnd);
      edits.push({ start: end, end, text: `<link rel="stylesheet" href="${address(file)}">` });
    }
    return edits;
  }
}

interface Place {
  readonly start: number;
  readonly end: number;
}

function asClass(present: string | undefined, classAt: Place | undefined, styleAt: Place, name: string): Edit[] {
  if (present === undefined || !classAt) return [{ ...styleAt, text: name === '' ? '' : `class="${name}"` }];
  if (name === '') return [{ ...styleAt, text: '' }];
  return [
    { ...styleAt, text: '' },
    { ...classAt, text: `class="${`${present} ${name}`.trim().replaceAll('&', '&amp;').replaceAll('"', '&quot;')}"` },
  ];
}
