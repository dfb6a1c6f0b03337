/** Figures an author hands to a component: {{ diameter: '400 mm', engine: 9100 }}. Literals only; nothing is run. */
import { isMap, isScalar, isSeq, parseDocument, type Node } from 'yaml';

/** What stands between the outer braces, as data; undefined where it is anything but literals. */
export function readLiteral(source: string): { readonly data: unknown } | undefined {
  const document = parseDocument(source, { prettyErrors: false });
  if (document.errors.length > 0 || !onlyLiterals(document.contents)) return undefined;
  return { data: document.toJS() as unknown };
}

/** A bare word is a name in the language of the page builder, and would be run there. */
function onlyLiterals(node: Node | null): boolean {
  if (isMap(node)) return node.items.every((pair) => isScalar(pair.key) && onlyLiterals(pair.value as Node | null));
  if (isSeq(node)) return node.items.every((item) => onlyLiterals(item as Node));
  if (!isScalar(node)) return false;
  return node.type === 'PLAIN' ? ['number', 'boolean'].includes(typeof node.value) : typeof node.value === 'string';
}
