/** A table as comma-separated text (RFC 4180), safe to open in a spreadsheet. */

export type Cell = string | number | null;

/**
 * Rows as text: fields with a comma, quote or line break are quoted, quotes doubled, lines end in CR LF.
 * Text that a spreadsheet would run as a formula (it starts with = + - @, tab or return) gets a leading
 * apostrophe. Numbers are written as numbers, also below zero.
 * @returns text with a line break after the last row
 * Source: rfc-4180.
 */
export function csvText(rows: readonly (readonly Cell[])[]): string {
  return rows.map((row) => `${row.map(csvField).join(',')}\r\n`).join('');
}

function csvField(cell: Cell): string {
  if (cell === null) return '';
  if (typeof cell === 'number') return Number.isFinite(cell) ? String(cell) : '';
  const safe = /^[=+\-@\t\r]/.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
