/** One file of content/, read and split into front matter and text. */
import { places } from '../../schemas/places.ts';
import { readYaml, type YamlText } from './yaml-text.ts';

export interface ContentFile {
  /** Path from the project folder, with forward slashes. */
  readonly path: string;
  /** "content/knowledge" or "content/shop"; "" for a file that stands in neither. */
  readonly place: string;
  /** "jobs", or "" for a file directly in its place. */
  readonly folder: string;
  /** "drive-belt-change", or "es/cutting-wet". */
  readonly id: string;
  readonly ending: string;
  readonly yaml: YamlText;
  /** The article below the front matter, led by as many line breaks as there are lines above it. */
  readonly body: string;
}

export function readContentFile(path: string, text: string): ContentFile {
  const place = places.find((p) => path.startsWith(`${p}/`)) ?? '';
  const inside = path.slice((place || 'content').length + 1);
  const [, folder = '', id = inside, ending = ''] = /^(?:([^/]+)\/)?(.+)\.([a-z]+)$/.exec(inside) ?? [];
  if (ending === 'yaml') return { path, place, folder, id, ending, yaml: readYaml(path, text, 1), body: '' };
  const split = /^---\r?\n([\s\S]*?)^---[ \t]*(?:\r?\n|$)/m.exec(text);
  if (!split || split.index !== 0) return { path, place, folder, id, ending, yaml: readYaml(path, '', 1), body: text };
  const above = split[0].split('\n').length - 1;
  return {
    path,
    place,
    folder,
    id,
    ending,
    yaml: readYaml(path, split[1] ?? '', 2),
    body: '\n'.repeat(above) + text.slice(split[0].length),
  };
}
