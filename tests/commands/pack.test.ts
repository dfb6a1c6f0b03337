/** The archive, read back by other programs than the one that wrote it. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { zip } from '../../src/commands/pack/zip.ts';
import { writeWhole } from '../../src/steps/support/whole-file.ts';

const place = mkdtempSync(join(tmpdir(), 'almanac-pack-'));
afterAll(() => rmSync(place, { recursive: true }));

const files = [
  { name: 'almanac/index.html', bytes: Buffer.from('<h1>Belts</h1>'.repeat(500)) },
  { name: 'almanac/es/señal.html', bytes: Buffer.from('ñ') },
  { name: 'almanac/empty.txt', bytes: Buffer.alloc(0) },
  { name: 'almanac/noise.bin', bytes: Buffer.from(Array.from({ length: 999 }, (_, i) => (i * 7919) & 255)) },
];

const python = spawnSync('python3', ['--version']).status === 0;
// Python's own reader of zip archives checks every sum (CRC-32) as it reads.
it.skipIf(!python)('opens in another program with the same names, bytes and day', () => {
  const path = join(place, 'site.zip');
  writeFileSync(path, zip(files, '2026-03-12'));
  const script = `
import zipfile, sys, json
z = zipfile.ZipFile(sys.argv[1])
assert z.testzip() is None
print(json.dumps([[i.filename, z.read(i).hex(), list(i.date_time)] for i in z.infolist()]))`;
  const ran = spawnSync('python3', ['-c', script, path], { encoding: 'utf8' });
  expect(ran.stderr).toBe('');
  const sorted = [...files].sort((a, b) => (a.name < b.name ? -1 : 1));
  expect(JSON.parse(ran.stdout)).toEqual(sorted.map((f) => [f.name, f.bytes.toString('hex'), [2026, 3, 12, 0, 0, 0]]));
});

it('gives the same bytes for the same files, whatever order they come in', () => {
  const one = zip(files, '2026-03-12');
  expect(zip([...files].reverse(), '2026-03-12').equals(one)).toBe(true);
  expect(zip(files, '2026-03-13').equals(one)).toBe(false);
  expect(one.length).toBeLessThan(files.reduce((sum, f) => sum + f.bytes.length, 0));
});

it('refuses more files than the format counts', () => {
  const many = (n: number) => Array.from({ length: n }, (_, i) => ({ name: `${i}`, bytes: Buffer.alloc(0) }));
  expect(() => zip(many(65_536), '2026-03-12')).toThrow(/65536 files are more/);
});

it('leaves no half of an archive where it cannot be put', () => {
  const stick = join(place, 'stick');
  // A folder of its name stands there.
  mkdirSync(join(stick, 'site.zip'), { recursive: true });
  expect(() => writeWhole(join(stick, 'site.zip'), zip(files, '2026-03-12'))).toThrow();
  expect(readdirSync(stick)).toEqual(['site.zip']);
});
