/** Headings: the page's own is the title, and each is one step below the one it belongs to. */
import Slugger from 'github-slugger';
import { visit, type BodyNode } from './parse-body.ts';
import type { Say } from './say.ts';

export function headingProblems(tree: BodyNode | undefined, say: Say): void {
  let depth = 1;
  const before = new Set<string>();
  visit(tree, (node) => {
    if (node.type !== 'heading' || node.depth === undefined) return;
    const said = textOf(node);
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
  });
}

/** The anchors the page builder will give an article's headings. */
export function anchorsOf(tree: BodyNode | undefined): Set<string> {
  const slugger = new Slugger();
  const anchors = new Set<string>();
  visit(tree, (node) => {
    if (node.type === 'heading') anchors.add(slugger.slug(textOf(node)));
  });
  return anchors;
}

function textOf(node: BodyNode): string {
  return node.value ?? (node.children ?? []).map(textOf).join('');
}
