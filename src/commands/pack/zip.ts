/**
 * A zip archive (APPNOTE.TXT of the format, version 2.0) that depends on nothing but names and bytes: files in the order
 * of their names, one day for all, no owner, no rights. Opened by a double click wherever a stick is put in.
 */
import { crc32, deflateRawSync } from 'node:zlib';

export interface ZipFile {
  /** With forward slashes. */
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** Beyond these the format needs its 64-bit form, which older systems cannot open. */
const mostFiles = 0xffff;
const mostBytes = 0xffffffff;

/** Names are UTF-8. */
const flags = 0x0800;
const needs = 20;
const packed = 8;
const plain = 0;

/** @param day YYYY-MM-DD, from 1980 on: the date every file bears @throws RangeError when the site is too large */
export function zip(files: readonly ZipFile[], day: string): Buffer {
  if (files.length > mostFiles) throw new RangeError(`${files.length} files are more than a zip archive holds.`);
  const date = dosDate(day);
  const parts: Buffer[] = [];
  const directory: Buffer[] = [];
  let at = 0;
  for (const { name, bytes } of [...files].sort((a, b) => (a.name < b.name ? -1 : 1))) {
    const smaller = deflateRawSync(bytes, { level: 9 });
    const shrinks = smaller.length < bytes.length;
    const body = shrinks ? smaller : Buffer.from(bytes);
    const path = Buffer.from(name, 'utf8');
    const about = Buffer.alloc(26);
    about.writeUInt16LE(needs, 0);
    about.writeUInt16LE(flags, 2);
    about.writeUInt16LE(shrinks ? packed : plain, 4);
    about.writeUInt16LE(0, 6);
    about.writeUInt16LE(date, 8);
    about.writeUInt32LE(crc32(bytes), 10);
    about.writeUInt32LE(body.length, 14);
    about.writeUInt32LE(bytes.length, 18);
    about.writeUInt16LE(path.length, 22);
    parts.push(Buffer.from('PK\x03\x04', 'latin1'), about, path, body);
    const place = Buffer.alloc(14);
    place.writeUInt32LE(at, 10);
    directory.push(Buffer.from('PK\x01\x02', 'latin1'), twoBytes(needs), about, place, path);
    at += 30 + path.length + body.length;
    if (at > mostBytes) throw new RangeError('The site is larger than the 4 GB a zip archive holds.');
  }
  const list = Buffer.concat(directory);
  const end = Buffer.alloc(18);
  end.writeUInt16LE(files.length, 4);
  end.writeUInt16LE(files.length, 6);
  end.writeUInt32LE(list.length, 8);
  end.writeUInt32LE(at, 12);
  return Buffer.concat([...parts, list, Buffer.from('PK\x05\x06', 'latin1'), end]);
}

function twoBytes(n: number): Buffer {
  const bytes = Buffer.alloc(2);
  bytes.writeUInt16LE(n);
  return bytes;
}

/** Years from 1980 in the upper seven bits, then four for the month, five for the day. */
function dosDate(day: string): number {
  const [year = 1980, month = 1, date = 1] = day.split('-').map(Number);
  return (Math.max(0, year - 1980) << 9) | (month << 5) | date;
}
