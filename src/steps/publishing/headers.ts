/**
 * A file "_headers", as several hosts of static sites read it: an address, and below it the headers of what answers
 * there. No two addresses with the same header meet, since a host may join what both say.
 */
import { madeFolder } from '../portable/made-files.ts';
import { policy } from '../portable/policy.ts';

/** Only a header can keep other sites from framing a page; in the page itself the word is passed over. */
export const headerPolicy = `${policy}; frame-ancestors 'none'`;

/**
 * How long a browser may keep a file of the site without asking again. The made ones are named after their bytes: what such
 * a name once gave, it always gives.
 */
export const cachingOf = (file: string): string =>
  file.startsWith(`${madeFolder}/`) ? 'public, max-age=31536000, immutable' : 'no-cache';

/** @param files every file of the site  @param base path the site stands below, "/" or "/shop/" */
export function headersText(files: readonly string[], base: string): string {
  const tops = [...new Set(files.map((file) => (file.includes('/') ? `${file.split('/')[0] ?? ''}/*` : file)))].sort();
  // A host may give a page without its ending, and the first one without its name.
  const addresses = tops.flatMap((top) => {
    if (top === 'index.html') return ['', top];
    return top.endsWith('.html') ? [top, top.slice(0, -'.html'.length)] : [top];
  });
  const blocks = addresses.map((address) => `${base}${address}\n  Cache-Control: ${cachingOf(address)}\n`);
  const all = [
    `${base}*`,
    `  Content-Security-Policy: ${headerPolicy}`,
    '  X-Content-Type-Options: nosniff',
    '  Referrer-Policy: same-origin',
  ];
  return `${all.join('\n')}\n\n${blocks.join('\n')}`;
}
