/** An article's text, ready to be laid out: its parts, its headings, its pictures found. */
import type { ImageMetadata } from 'astro';
import { pictures } from 'almanac:pictures';
import { articleBody, type ArticleBody, type Part } from './parts.ts';

export interface Written {
  readonly body?: string | undefined;
  /** "content/knowledge/jobs/drive-belt-change.mdx" */
  readonly filePath?: string | undefined;
}

/** Elements of the text that components stand in for. */
const standIns = new Set(['table', 'img']);

export function bodyOf({ body = '', filePath = '' }: Written): ArticleBody {
  const { parts, headings } = articleBody(body, standIns);
  return { parts: parts.map(shown), headings };

  function shown(part: Part): Part {
    if (typeof part === 'string') return part;
    const children = part.children.map(shown);
    const src = part.props['src'];
    if (part.name !== 'img' || typeof src !== 'string' || !src.startsWith('.')) return { ...part, children };
    return { ...part, children, props: { ...part.props, src: pictureAt(src) } };
  }

  function pictureAt(src: string): ImageMetadata {
    const file = new URL(src, `file:///${filePath}`).pathname.slice(1);
    const found = pictures[file];
    if (!found) throw new Error(`${filePath} shows ${src}, and there is no picture ${file}.`);
    return found;
  }
}
