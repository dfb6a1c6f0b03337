/** Links and pictures in an article. */
import { readPath } from '../../browser/address/index.ts';
import type { ContentFile } from './content-file.ts';
import { hasAddress, leadsToDraft, pageAt, type Library } from './library.ts';
import type { Piece } from './parse-body.ts';
import { isPicture } from './pictures.ts';
import { didYouMean, listed } from './problem.ts';
import type { Say } from './say.ts';

const outside = ['https:', 'http:', 'mailto:', 'tel:'];

export function linkProblems(node: Piece, file: ContentFile, library: Library, say: Say): void {
  const link = node.url ?? '';
  const scheme = /^[a-z][a-z0-9+.-]*:/i.exec(link)?.[0].toLowerCase();
  if (scheme !== undefined) {
    if (!outside.includes(scheme))
      say(node, 'link', link, `an address on this site, or one that begins with ${listed(outside)}`);
    return;
  }
  const [path = '', anchor] = link.split('#');
  if (path === '') return anchorProblems(node, `${file.folder}/${file.id}`, anchor, library, say);
  if (!link.startsWith('/')) return say(node, 'link', link, 'an address from the top, like /jobs/drive-belt-change/');
  if (!hasAddress(library, link) && leadsToDraft(library, link))
    return say(node, 'link', link, 'a page that is published; this one is still a draft');
  if (!hasAddress(library, link))
    return say(node, 'link', link, `a page that exists.${didYouMean(link, library.addresses)}`);
  const page = pageAt(path);
  if (page !== undefined) anchorProblems(node, page, anchor, library, say);
}

/** Anchors of articles are known here; those of made pages are looked at once the site stands. */
function anchorProblems(node: Piece, page: string, anchor: string | undefined, library: Library, say: Say): void {
  const anchors = library.anchors.get(page);
  if (anchor === undefined || anchors === undefined || anchors.has(readPath(anchor) ?? anchor)) return;
  say(node, 'link', node.url ?? '', `a heading of that page.${didYouMean(anchor, anchors)}`);
}

export function pictureProblems(node: Piece, file: ContentFile, library: Library, say: Say): void {
  const picture = node.url ?? '';
  const alt = (node.alt ?? '').trim();
  if (alt === '')
    say(node, 'picture', picture, 'words in the square brackets that say what it shows: ![A worn belt](...)');
  if (/^[a-z][a-z0-9+.-]*:|^\/\//i.test(picture))
    return say(node, 'picture', picture, 'a file of this project: nothing is loaded from elsewhere');
  const path = picture.startsWith('/') ? `public${picture}` : beside(file.path, picture);
  if (!library.files.has(path))
    say(
      node,
      'picture',
      picture,
      `a file that exists; ${path} does not.${didYouMean(path, [...library.files].filter(isPicture))}`,
    );
}

/** "content/shop/jobs/x.mdx" and "./belt.jpg" -> "content/shop/jobs/belt.jpg" */
function beside(file: string, picture: string): string {
  const parts = file.split('/').slice(0, -1);
  for (const part of picture.split('/')) {
    if (part === '..') parts.pop();
    else if (part !== '.') parts.push(part);
  }
  return parts.join('/');
}

/** "[the cord][nope]" stands in the text as it is when nothing is defined under that name. */
export function referencesNowhere(node: Piece, say: Say): void {
  for (const [all] of (node.value ?? '').matchAll(/\[[^\][\n]+\]\[[^\][\n]*\]/g))
    say(node, 'link', all, 'the address in round brackets, like [the cord](/jobs/recoil-cord/)');
}
