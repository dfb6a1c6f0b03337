/**
 * Reads an archive as "git archive" writes it (POSIX.1-1988 ustar with POSIX.1-2001 headers for long names), packed with
 * gzip or not. Only files are taken; links are refused, since nothing of the almanac is one.
 */
import { gunzipSync } from 'node:zlib';

const block = 512;

/** Names with forward slashes, without the folder all of them may stand in. @throws Error with a sentence */
export function readTar(bytes: Uint8Array): Map<string, Buffer> {
  const raw = Buffer.from(bytes);
  const data = raw[0] === 0x1f && raw[1] === 0x8b ? gunzipSync(raw) : raw;
  const files = new Map<string, Buffer>();
  let next: string | undefined;
  for (let at = 0; at + block <= data.length;) {
    const head = data.subarray(at, at + block);
    if (head.every((byte) => byte === 0)) break;
    if (sumOf(head) !== octal(head, 148, 8)) throw new Error('it is no tar archive, or a damaged one');
    const size = octal(head, 124, 12);
    const body = data.subarray(at + block, at + block + size);
    if (body.length < size) throw new Error('the archive ends in the middle of a file');
    const kind = String.fromCharCode(head[156] ?? 0);
    const name = next ?? joined(text(head, 345, 155), text(head, 0, 100));
    next = undefined;
    if (kind === 'x') next = pathIn(body);
    else if (kind === 'L') next = text(body, 0, body.length);
    else if (kind === '0' || kind === '\0') files.set(safe(name), Buffer.from(body));
    else if (kind !== '5' && kind !== 'g') throw new Error(`"${name}" in it is no file and no folder`);
    at += block + Math.ceil(size / block) * block;
  }
  if (files.size === 0) throw new Error('it is no tar archive, or an empty one');
  return withoutTop(files);
}

const text = (bytes: Uint8Array, from: number, length: number): string =>
  Buffer.from(bytes.subarray(from, from + length))
    .toString('utf8')
    .split('\0')[0] ?? '';

function octal(head: Uint8Array, from: number, length: number): number {
  const digits = text(head, from, length).trim();
  return /^[0-7]*$/.test(digits) ? Number.parseInt(digits || '0', 8) : Number.NaN;
}

/** The sum of the header's bytes, its own eight counted as spaces. */
function sumOf(head: Uint8Array): number {
  return head.reduce((sum, byte, i) => sum + (i >= 148 && i < 156 ? 32 : byte), 0);
}

const joined = (folder: string, name: string): string => (folder === '' ? name : `${folder}/${name}`);

/** "23 path=a/long/name\n" among other records of a header. */
function pathIn(records: Uint8Array): string | undefined {
  return /^\d+ path=(.*)$/m.exec(Buffer.from(records).toString('utf8'))?.[1];
}

function safe(name: string): string {
  const path = name.replace(/^\.\//, '');
  if (path.startsWith('/') || path.includes('\\') || path.split('/').includes('..'))
    throw new Error(`"${name}" in it leads out of its folder`);
  return path;
}

function withoutTop(files: Map<string, Buffer>): Map<string, Buffer> {
  const [first = ''] = files.keys();
  const top = first.slice(0, first.indexOf('/') + 1);
  if (top === '' || files.has('package.json') || ![...files.keys()].every((name) => name.startsWith(top))) return files;
  return new Map([...files].map(([name, bytes]) => [name.slice(top.length), bytes]));
}
