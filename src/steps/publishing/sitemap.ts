/** The list of pages for search engines (sitemaps.org, protocol 0.9), and the file that leads them to it. */

/** Shown only by a host, or only without a connection. */
const unlisted = new Set(['404.html', 'offline.html']);

const escaped = (text: string) => text.replace(/[&<>"']/g, (sign) => `&#${sign.codePointAt(0) ?? 0};`);

/** @param files every file of the site  @param site the address it will live at, ending in "/" */
export function sitemapText(files: readonly string[], site: string): string {
  const pages = files.filter((file) => file.endsWith('.html') && !unlisted.has(file)).sort();
  const lines = pages.map((file) => {
    const address = new URL(file === 'index.html' ? '' : encodeURI(file), site).href;
    return `  <url><loc>${escaped(address)}</loc></url>`;
  });
  return `<?xml version="1.0" encoding="UTF-8"?>
<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">
${lines.join('\n')}
</urlset>
`;
}

/** Search engines look for it at the top of a host alone; below one it does no harm. */
export function robotsText(site: string): string {
  return `User-agent: *
Allow: /

Sitemap: ${new URL('sitemap.xml', site).href}
`;
}
