/** Hands the reader a file made on this page. Works from a server and from disk: nothing is sent anywhere. */

export type FileKind = 'csv' | 'ics' | 'json';

const types: Readonly<Record<FileKind, string>> = {
  csv: 'text/csv;charset=utf-8',
  ics: 'text/calendar;charset=utf-8',
  json: 'application/json',
};
/** Without this mark spreadsheets take the file for an old code page and break every accent. */
const byteOrderMark = '\uFEFF';

/** @param name without ending, in words: "Quote 1182" becomes quote-1182.csv */
export function download(name: string, kind: FileKind, text: string): void {
  const address = URL.createObjectURL(new Blob([kind === 'csv' ? byteOrderMark + text : text], { type: types[kind] }));
  const link = document.createElement('a');
  link.href = address;
  link.download = fileName(name, kind);
  // Some browsers pass over a link that is not in the page.
  document.body.append(link);
  link.click();
  link.remove();
  // The browser reads the file after the click; taking the address away at once would leave it empty.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** Small letters, digits and hyphens, whatever was typed; disks and mail agree on those. */
export function fileName(name: string, kind: FileKind): string {
  const plain = name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
  return `${plain.slice(0, 60) || 'file'}.${kind}`;
}
