/** One file of content/, read and split into front matter and text. */
import { readYaml, type YamlText } from './yaml-text.ts';

export interface ContentFile {
  /** Path from the project folder, with forward slashes. */
  readonly path: string;
  /** "jobs", or "" for a file directly in content/. */
  readonly folder: string;
  /** "drive-belt-change", or "es/cutting-wet". */
  readonly id: string;
  readonly ending: string;
  readonly yaml: YamlText;
  /** The article below the front matter, led by as many line breaks as there are lines above it. */
  readonly body: string;
}

export function readContentFile(path: string, text: string): ContentFile {
  const [, folder = '', id = '', ending = ''] = /^content\/(?:([^/]+)\/)?(.+)\.([a-z]+)$/.exec(path) ?? [];
  if (ending === 'yaml') return { path, folder, id, ending, yaml: readYaml(path, text, 1), body: '' };
  const split = /^---\r?\n([\s\S]*?)^---[ \t]*(?:\r?\n|$)/m.exec(text);
  if (!split || split.index !== 0) return { path, folder, id, ending, yaml: readYaml(path, '', 1), body: text };
  const above = split[0].split('\n').length - 1;
  return {
    path,
    folder,
    id,
    ending,
    yaml: readYaml(path, split[1] ?? '', 2),
    body: '\n'.repeat(above) + text.slice(split[0].length),
  };
}
