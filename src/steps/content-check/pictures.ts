/** Pictures that stand beside an article. The build shrinks them and leaves out what the camera wrote into them. */
import { kindOf, kinds } from '../../schemas/kinds.ts';
import type { Problem } from './problem.ts';

/** Endings of the pictures the build can shrink, each with how such a file begins. */
const begins: Readonly<Record<string, (bytes: Uint8Array) => boolean>> = {
  jpg: (b) => b[0] === 0xff && b[1] === 0xd8 && b[2] === 0xff,
  png: (b) => letters(b, 1, 4) === 'PNG',
  webp: (b) => letters(b, 0, 4) === 'RIFF' && letters(b, 8, 12) === 'WEBP',
};

/** Endings of files that somebody puts beside an article as a picture, and that are not taken. */
const others = new Set([
  'jpeg',
  'heic',
  'heif',
  'gif',
  'tif',
  'tiff',
  'bmp',
  'avif',
  'svg',
  'raw',
  'dng',
  'pdf',
  'mp4',
  'mov',
]);

/** More than a phone's picture sent on at full size; a build of many such would be slow. */
export const mostBytes = 4_000_000;

const allowed = `.${Object.keys(begins).join(', .')}`;

const letters = (bytes: Uint8Array, from: number, to: number) => String.fromCharCode(...bytes.subarray(from, to));

const endingOf = (name: string) => /\.([^./]+)$/.exec(name)?.[1] ?? '';

/** Also one of a kind that is refused, or written in capitals: it is told as a picture, not as a broken article. */
export function isPicture(path: string): boolean {
  const ending = endingOf(path).toLowerCase();
  return Object.hasOwn(begins, ending) || others.has(ending);
}

/** @param path from the project folder  @param folder "jobs"  @param bytes the whole file */
export function pictureFileProblems(path: string, folder: string, bytes: Uint8Array): Problem[] {
  const say = (field: string, got: string, wanted: string): Problem[] => [
    { file: path, line: 1, field, got, allowed: wanted },
  ];
  const name = path.split('/').at(-1) ?? '';
  const ending = endingOf(name);
  if (kindOf(folder)?.ending !== 'mdx')
    return say(
      'file name',
      `a picture in ${folder || 'no folder'}`,
      `a picture beside the article that shows it, in ${articleFolders()}`,
    );
  const starts = Object.hasOwn(begins, ending) ? begins[ending] : undefined;
  if (Object.hasOwn(begins, ending.toLowerCase()) && !starts)
    return say('file name', `.${ending}`, `the ending in small letters: .${ending.toLowerCase()}`);
  if (!starts) return say('file name', `.${ending}`, `a picture ending in ${allowed}; save it anew in one of these`);
  if (!/^[a-z0-9]+(?:-[a-z0-9]+)*$/.test(name.slice(0, -ending.length - 1)))
    return say('file name', name, `small letters, digits and single hyphens, like worn-belt.${ending}`);
  if (bytes.length > mostBytes)
    return say(
      'the file',
      `${(Math.ceil(bytes.length / 1e4) / 100).toFixed(2)} MB`,
      `at most ${mostBytes / 1e6} MB; 2000 pixels a side are plenty`,
    );
  if (!starts(bytes))
    return say('the file', 'something else under the name of a picture', `a picture saved as .${ending}`);
  return [];
}

function articleFolders(): string {
  return Object.entries(kinds)
    .filter(([, kind]) => kind.ending === 'mdx')
    .map(([folder]) => folder)
    .join(', ');
}
