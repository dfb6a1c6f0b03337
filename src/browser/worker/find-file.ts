/** Which saved file an address means: slash or none, ending or none, any query. */

export function findFile(path: string, has: (file: string) => boolean): string | undefined {
  const bare = path.replace(/\/+$/, '');
  const tries = bare === '' ? ['index.html'] : [path, `${bare}.html`, `${bare}/index.html`];
  return tries.find(has);
}

/** Links on a page are relative, so it must be shown at an address of its own depth. */
export function sameDepth(path: string, file: string): boolean {
  return path.split('/').length === file.split('/').length;
}
