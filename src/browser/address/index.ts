/**
 * The one rule from an address to a file of the site, and back. The offline worker, the step that checks links and
 * the server for this machine all go by it, so that a link means the same page everywhere. No browser parts in here.
 */

/** What an address says after its top ("jobs/caf%C3%A9"), read; nothing where it is malformed ("%zz"). */
export function readPath(written: string): string | undefined {
  try {
    const path = decodeURIComponent(written);
    return path.includes('\0') ? undefined : path;
  } catch {
    return undefined;
  }
}

/** Files an address may mean, the likeliest first: slash or none at the end, ending or none. */
export function filesMeant(path: string): readonly string[] {
  const bare = path.replace(/\/+$/, '');
  return bare === '' ? ['index.html'] : [bare, `${bare}.html`, `${bare}/index.html`];
}

/** The file an address means, among those `has` knows. */
export function findFile(path: string, has: (file: string) => boolean): string | undefined {
  return filesMeant(path).find(has);
}

/** Links on a page are relative, so it must be shown at an address of its own depth. */
export function sameDepth(path: string, file: string): boolean {
  return path.split('/').length === file.split('/').length;
}

/** A file's path as an address writes it. */
export function encodePath(path: string): string {
  return path.split('/').map(encodeURIComponent).join('/');
}
