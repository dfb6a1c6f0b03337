/**
 * What kind of file an ending means. The server for this machine says it, and the worker keeps it beside each file:
 * a host that says something else on one bad day must not spoil the saved copy for good.
 */
const types: Readonly<Record<string, string>> = {
  html: 'text/html; charset=utf-8',
  css: 'text/css; charset=utf-8',
  js: 'text/javascript; charset=utf-8',
  json: 'application/json; charset=utf-8',
  webmanifest: 'application/manifest+json; charset=utf-8',
  svg: 'image/svg+xml; charset=utf-8',
  txt: 'text/plain; charset=utf-8',
  xml: 'application/xml; charset=utf-8',
  png: 'image/png',
  jpg: 'image/jpeg',
  jpeg: 'image/jpeg',
  webp: 'image/webp',
  avif: 'image/avif',
  ico: 'image/x-icon',
  woff2: 'font/woff2',
  woff: 'font/woff',
};

/** Nothing for an ending the site does not use. */
export function typeOf(file: string): string | undefined {
  return types[/\.(\w+)$/.exec(file)?.[1]?.toLowerCase() ?? ''];
}
