/** Which files make up one kind of content, as patterns below content/: what the shop replaces is left out of the knowledge. */
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Kind } from '../../schemas/kinds.ts';
import { places } from '../../schemas/places.ts';

/** Folder the patterns count from. */
export const contentBase = './content';

// Every place's files of the kind, and, marked with "!", the knowledge that a later place replaces.
export function contentPatterns(projectFolder: string, folder: string, { ending, page }: Kind): string[] {
  const inside = places.map((place) => place.slice('content/'.length));
  const depth = page && ending === 'mdx' ? '**/*' : '*';
  const replaced = places.flatMap((place, at) =>
    filesIn(join(projectFolder, place, folder)).flatMap((file) =>
      inside.slice(0, at).map((earlier) => `!${earlier}/${folder}/${file}`),
    ),
  );
  return [...inside.map((place) => `${place}/${folder}/${depth}.${ending}`), ...replaced];
}

// Every place's files of the kind, and, marked with "!", the knowledge that a later place replaces.
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
