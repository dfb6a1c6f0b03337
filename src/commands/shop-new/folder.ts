/** Where a new shop may stand. */
import { existsSync, statSync } from 'node:fs';
import { dirname, join, relative, resolve, sep } from 'node:path';
import { shopFileName } from '../../schemas/places.ts';

/** Says why no shop can be made there, or nothing. */
export function wrongFolder(typed: string, projectFolder: string): string | undefined {
  if (sep === '/' && typed.includes('\\'))
    return `"${typed}": folders are parted by "/" here, like ${typed.replaceAll('\\', '/')}`;
  if (typed.startsWith('~')) return `"${typed}": name the folder in full or as seen from here, like ../my-shop`;
  const folder = resolve(typed);
  if (existsSync(join(folder, shopFileName))) return `${folder} holds a shop already; nothing was changed.`;
  const inside = relative(resolve(projectFolder), folder);
  const apart = inside.startsWith('..') || resolve(inside) === inside;
  if (!apart)
    return `${folder} is the almanac's own folder or in it, where the next almanac would meet it. Name one beside it, like ../my-shop`;
  for (let at = folder; ; at = dirname(at))
    if (existsSync(at)) return statSync(at).isDirectory() ? undefined : `${at} is a file; a shop needs a folder.`;
}
