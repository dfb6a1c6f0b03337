/** Which files make up one kind of content, as patterns below content/: what the shop replaces is left out of the knowledge. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Kind } from '../../schemas/kinds.ts';
import { places } from '../../schemas/places.ts';
import { isDraft } from './drafts.ts';
import { leftOut } from './shop-says.ts';

/** Folder the patterns count from. */
export const contentBase = './content';

/**
 * Every place's files of the kind, and, marked with "!", what is not taken: drafts, the knowledge that a later place
 * replaces, and what the shop leaves out of it.
 */
export function contentPatterns(
  projectFolder: string,
  folder: string,
  { ending, page }: Kind,
  withDrafts = false,
): string[] {
  const inside = places.map((place) => place.slice('content/'.length));
  const depth = page && ending === 'mdx' ? '**/*' : '*';
  const drafts: string[] = [];
  const replaced = places.flatMap((place, at) =>
    filesIn(join(projectFolder, place, folder))
      .filter((file) => file.endsWith(`.${ending}`))
      .flatMap((file) => {
        if (
          ending === 'mdx' &&
          !withDrafts &&
          isDraft(readFileSync(join(projectFolder, place, folder, file), 'utf8'))
        ) {
          drafts.push(`!${inside[at] ?? ''}/${folder}/${file}`);
          return [];
        }
        return inside.slice(0, at).map((earlier) => `!${earlier}/${folder}/${file}`);
      }),
  );
  const unwanted = [...leftOut(projectFolder)]
    .filter((name) => name.startsWith(`${folder}/`))
    .flatMap((name) => [name, name.replace('/', '/*/')].map((path) => `!${inside[0] ?? ''}/${path}.${ending}`));
  return [...inside.map((place) => `${place}/${folder}/${depth}.${ending}`), ...drafts, ...replaced, ...unwanted];
}

/** The name of an entry: its path without the place, the folder and the ending. */
export function contentId(entry: string): string {
  return entry
    .split('/')
    .slice(2)
    .join('/')
    .replace(/\.[^.]+$/, '');
}

function filesIn(folder: string): string[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((file) => file.replaceAll('\\', '/'));
}
