/** Headings: the page's own is the title, and each is one step below the one it belongs to. */
import Slugger from 'github-slugger';
import type { Piece } from './parse-body.ts';
import type { Say } from './say.ts';

export function headingProblems(pieces: readonly Piece[], say: Say): void {
  let depth = 1;
  const before = new Set<string>();
  for (const node of pieces) {
    if (node.type !== 'heading' || node.depth === undefined) continue;
    const said = node.value ?? '';
    if (node.depth === 1) say(node, 'heading', `# ${said}`, '"## ..." and below: the title is the page\'s own heading');
    else if (node.depth > depth + 1)
      say(
        node,
        'heading',
        `${'#'.repeat(node.depth)} ${said}`,
        `at most ${'#'.repeat(depth + 1)}, one step below the heading above`,
      );
    if (before.has(said.toLowerCase()))
      say(node, 'heading', said, 'a heading of its own; this one stands above already');
    before.add(said.toLowerCase());
    depth = node.depth;
  }
}

/** The anchors the page builder will give an article's headings. */
export function anchorsOf(pieces: readonly Piece[]): Set<string> {
  const slugger = new Slugger();
  return new Set(pieces.filter(({ type }) => type === 'heading').map(({ value }) => slugger.slug(value ?? '')));
}
