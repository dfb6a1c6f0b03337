/** How a table written in an article reads on a phone, from its HTML: rows as blocks, or sideways under a standing first column. */

const cells = (row: string): string[] =>
  [...row.matchAll(/<t[dh]\b[^>]*>([\s\S]*?)<\/t[dh]>/g)].map((m) => plain(m[1] ?? ''));

function plain(html: string): string {
  return html
    .replace(/<[^>]*>/g, '')
    .replace(/\s+/g, ' ')
    .trim();
}

/** A figure with its unit, or a short mark: what is compared down a column. */
const isFigure = (text: string): boolean => text.length <= 14 && (/\d/.test(text) || text.length <= 3);

export interface PhoneTable {
  /** "blocks" for words, "sideways" for figures to compare, "as it is" where it fits. */
  readonly form: 'blocks' | 'sideways' | 'as it is';
  /** The table, each cell of its body knowing its column's name, its first cell a row head. */
  readonly html: string;
}

/** The names of a table's columns: what tells it from the others of a page to somebody who hears it. */
export function columnsOf(html: string): string {
  const names = cells(/<thead[^>]*>([\s\S]*?)<\/thead>/.exec(html)?.[1] ?? '').filter((name) => name !== '');
  return names
    .join(', ')
    .replace(/&(lt|gt|quot|#39);/g, (_, name: keyof typeof letters) => letters[name])
    .replaceAll('&amp;', '&');
}

const letters = { lt: '<', gt: '>', quot: '"', '#39': "'" } as const;

/** Words in the cells and three columns or more become blocks; figures move sideways; two columns fit. */
export function forPhone(html: string): PhoneTable {
  const head = cells(/<thead[^>]*>([\s\S]*?)<\/thead>/.exec(html)?.[1] ?? '');
  const body = /<tbody[^>]*>([\s\S]*?)<\/tbody>/.exec(html)?.[1] ?? '';
  const rows = [...body.matchAll(/<tr\b[^>]*>([\s\S]*?)<\/tr>/g)].map((m) => m[1] ?? '');
  const values = rows.flatMap((row) => cells(row).slice(1));
  if (head.length < 3 || values.length === 0) return { form: 'as it is', html };
  const figures = values.filter(isFigure).length / values.length;
  const widest = Math.max(...rows.map((row) => cells(row).reduce((sum, c) => sum + c.length, 0)));
  if (figures > 0.6 && widest < 34 && head.join('').length < 40) return { form: 'as it is', html };
  // One sentence in a cell makes a row of figures wider than it can be moved.
  const longest = Math.max(...values.map((v) => v.length));
  if (figures > 0.6 && head.length > 3 && longest < 27) return { form: 'sideways', html };
  return { form: 'blocks', html: html.replace(body, () => rows.map((row) => `<tr>${named(row, head)}</tr>`).join('')) };
}

/** A row whose first cell is its head and whose other cells say which column they stand in. */
function named(row: string, head: readonly string[]): string {
  let column = -1;
  return row.replace(/<(t[dh])\b([^>]*)>([\s\S]*?)<\/t[dh]>/g, (_, tag: string, attributes: string, inner: string) => {
    column += 1;
    if (column === 0) {
      const scope = attributes.includes('scope=') ? '' : ' scope="row"';
      return `<th${scope}${attributes}>${inner}</th>`;
    }
    return `<${tag}${attributes} data-of="${(head[column] ?? '').replace(/"/g, '&quot;')}">${inner}</${tag}>`;
  });
}
