/** Addresses of pages, as links inside the site and as text for print. */
import { shop } from './shop.ts';

/** "jobs/drive-belt-change" -> "/jobs/drive-belt-change/" */
export function pathOf(page: string): string {
  return `/${page}/`;
}

/** The live address of a page, for print and its square code; none when the shop has not set a site. */
export function liveAddress(path: string): string | undefined {
  if (!shop.site) return undefined;
  const file = path === '/' ? '' : `${path.replace(/^\/|\/$/g, '')}.html`;
  return new URL(file, shop.site).href;
}
