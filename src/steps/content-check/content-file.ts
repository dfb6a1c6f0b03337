/** One file of content/, read and split into front matter and text. */
import { places } from '../../schemas/places.ts';
import { isDraft } from '../support/drafts.ts';
import type { KnownTexts } from './known-texts.ts';
import type { Problem } from './problem.ts';
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
  /** An article that is not published yet. */
  readonly draft: boolean;
  /** Set when nothing in the file can be read: a picture under the name of an article, text in another encoding. */
  readonly unreadable: Problem | undefined;
  /** What was read of this text and others before. */
  readonly known: KnownTexts | undefined;
}

export function readContentFile(path: string, bytes: Uint8Array, known?: KnownTexts): ContentFile {
  const place = places.find((p) => path.startsWith(`${p}/`)) ?? '';
  const inside = path.slice((place || 'content').length + 1);
  const [, folder = '', name = inside] = /^(?:([^/]+)\/)?(.+)$/.exec(inside) ?? [];
  const [, id = name, ending = ''] = /^(.+)\.([^./]+)$/.exec(name) ?? [];
  const { text, problem } = decoded(path, bytes);
  const draft = ending === 'mdx' && isDraft(text);
  const file = { path, place, folder, id, ending, draft, unreadable: problem, known };
  if (problem) return { ...file, yaml: readYaml(path, '', 1), body: '' };
  if (ending === 'yaml') return { ...file, yaml: readYaml(path, text, 1, known), body: '' };
  const split = /^(\s*)---[ \t]*\r?\n([\s\S]*?)^---[ \t]*(?:\r?\n|$)/m.exec(text);
  if (split?.index !== 0) {
    const unreadable = {
      file: path,
      line: 1,
      field: 'the file',
      got: shownStart(text),
      allowed: '"---" in the first line, then the fields, then a second "---", then the text',
    };
    return { ...file, unreadable, yaml: readYaml(path, '', 1), body: '' };
  }
  const above = split[0].split('\n').length - 1;
  const firstLine = (split[1] ?? '').split('\n').length + 1;
  return {
    ...file,
    yaml: readYaml(path, split[2] ?? '', firstLine, known),
    body: '\n'.repeat(above) + text.slice(split[0].length),
  };
}

function shownStart(text: string): string {
  const first = (text.trimStart().split('\n')[0] ?? '').trim();
  return first === '' ? 'nothing' : first.slice(0, 60);
}

/** Text is UTF-8, with or without the mark some editors put before it. */
function decoded(path: string, bytes: Uint8Array): { text: string; problem?: Problem } {
  const refuse = (line: number, got: string, allowed: string) => ({
    text: '',
    problem: { file: path, line, field: 'the file', got, allowed },
  });
  const save = 'text saved as UTF-8 ("Save as", encoding UTF-8)';
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff))
    return refuse(1, 'text saved as UTF-16', save);
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    const zero = text.indexOf('\0');
    if (zero >= 0) return refuse(lineAt(text, zero), 'a sign that no text holds (NUL)', save);
    return { text };
  } catch {
    const text = new TextDecoder('utf-8').decode(bytes);
    return refuse(lineAt(text, text.indexOf('\uFFFD')), 'a letter in another encoding', save);
  }
}

function lineAt(text: string, offset: number): number {
  return text.slice(0, offset).split('\n').length;
}
