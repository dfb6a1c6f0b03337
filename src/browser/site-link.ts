/**
 * Links made while the page is open. The built site may stand at any depth and may be opened from a folder,
 * so the page says where its root is (`data-root` on <html>) and pages are single files.
 */
export function siteLink(path: string): string {
  if (typeof document === 'undefined') return path;
  const root = document.documentElement.dataset['root'] ?? '/';
  if (root === '/') return path;
  return root + path.slice(1).replace(/\/(?=$|[#?])/, '.html');
}
