/**
 * The fewest pages (found greedily) on which everything the style sheets can tell apart stands: each element and class
 * within each other one. Colors hang on these alone, so what is true of their colors here is true on every page.
 */
import { parse, type DefaultTreeAdapterTypes } from 'parse5';
import { pages, readPage } from './site.ts';

type Node = DefaultTreeAdapterTypes.Node;

/** "ul > li", ".facts > dt", ...: an element's name and classes within those of the element around it. */
function looksOf(html: string): Set<string> {
  const looks = new Set<string>();
  walk(parse(html), []);
  return looks;

  function walk(node: Node, around: readonly string[]): void {
    let own = around;
    if ('tagName' in node) {
      const classes = node.attrs.find((a) => a.name === 'class')?.value.split(/\s+/) ?? [];
      own = [node.tagName, ...classes.map((name) => `.${name}`)];
      for (const outer of around) for (const inner of own) looks.add(`${outer} > ${inner}`);
    }
    if ('childNodes' in node) for (const child of node.childNodes) walk(child, own);
  }
}

function fewest(all: readonly string[]): string[] {
  const rest = new Map(all.map((page) => [page, looksOf(readPage(page))]));
  const left = new Set([...rest.values()].flatMap((looks) => [...looks]));
  const chosen: string[] = [];
  while (left.size > 0) {
    const news = [...rest].map(([page, looks]) => ({
      page,
      looks,
      count: [...looks].filter((look) => left.has(look)).length,
    }));
    const best = news.reduce((a, b) => (b.count > a.count ? b : a));
    chosen.push(best.page);
    rest.delete(best.page);
    for (const look of best.looks) left.delete(look);
  }
  return chosen;
}

export const everyLook: readonly string[] = fewest(pages);
