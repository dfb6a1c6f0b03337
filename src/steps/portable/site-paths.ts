/** From the address an author writes ("/jobs/x/") to the file in dist, and to a path relative to a page. */
import { posix } from 'node:path';
import { encodePath, findFile, readPath } from '../../browser/address/index.ts';

/** Files of dist with forward slashes. */
export type FileSet = ReadonlySet<string>;

/** The file a root-absolute address means, or undefined when dist has none. */
export function fileFor(address: string, files: FileSet): string | undefined {
  const path = readPath(address.replace(/^\//, ''));
  return path === undefined ? undefined : findFile(path, (file) => files.has(file));
}

/** How a page names another file of the same folder tree. */
export function relativePath(fromFile: string, toFile: string): string {
  return encodePath(posix.relative(posix.dirname(fromFile), toFile));
}

/** The way from a page to the top folder: "./" or "../" or "../../". */
export function rootOf(file: string): string {
  const depth = file.split('/').length - 1;
  return depth === 0 ? './' : '../'.repeat(depth);
}
