/** Taking a new engine and knowledge, from a folder and from an archive that git itself made. The shop is made up. */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { listReplaced, replace } from '../../src/commands/replace/replace.ts';
import { readTar } from '../../src/commands/update/tar.ts';
import { update } from '../../src/commands/update/update.ts';

let top: string;
const at = (path: string) => join(top, path);
const put = (path: string, text: string) => {
  mkdirSync(dirname(at(path)), { recursive: true });
  writeFileSync(at(path), text);
};
const read = (path: string) => readFileSync(at(path), 'utf8');
const job = (text: string) => `---\ntitle: Belt\n---\n\n${text}\n`;
/** What the commands do, in the folder "here", whose shop stands in content/shop. */
const replaceIn = async (page?: string, seen = false) => {
  if (page === undefined) return listReplaced(at('here'));
  const said = await replace(at('here'), page, seen);
  return 'done' in said ? said.done : `refused: ${said.refused}`;
};
const updateFrom = (from: string, look = false) => update(at('here'), at(from), look);

beforeEach(() => {
  top = mkdtempSync(join(tmpdir(), 'almanac-update-'));
  for (const version of ['here', 'new']) {
    put(`${version}/src/schemas/shop.ts`, '// the engine');
    put(`${version}/src/commands/fuzz.ts`, '// a command');
    put(`${version}/package.json`, JSON.stringify({ type: 'module', version: version === 'new' ? '0.2.0' : '0.1.0' }));
    put(`${version}/package-lock.json`, '{}');
    put(`${version}/astro.config.mjs`, '');
    put(`${version}/content/knowledge/jobs/belt.mdx`, job('Old.'));
    put(`${version}/content/knowledge/jobs/cord.mdx`, job('Cord.'));
    put(`${version}/content/shop/shop.yaml`, version === 'new' ? 'name: the demo\n' : 'name: Ribera Saws\n');
  }
  put('here/content/shop/jobs/own.mdx', job('Only here.'));
  put('here/public/yard.jpg', 'a picture of the shop');
});
afterEach(() => rmSync(top, { recursive: true }));

/** The new version: one job changed, one gone, one added; a file of the engine gone. */
function change() {
  put('new/content/knowledge/jobs/belt.mdx', job('New.'));
  put('new/content/knowledge/jobs/plug.mdx', job('Plug.'));
  rmSync(at('new/content/knowledge/jobs/cord.mdx'));
  rmSync(at('new/src/commands/fuzz.ts'));
}

describe('npm run replace', () => {
  it('copies a page, notes its original, and never writes over a page of the shop', async () => {
    expect(await replaceIn('jobs/belt')).toContain('it now stands in for the page');
    expect(read('here/content/shop/jobs/belt.mdx')).toBe(job('Old.'));
    expect(read('here/content/shop/replaced.yaml')).toMatch(/^jobs\/belt\.mdx: [0-9a-f]{16}$/m);
    put('here/content/shop/jobs/belt.mdx', job('Mine.'));
    expect(await replaceIn('jobs/belt')).toMatch(/refused: .* is there already; nothing was changed/);
    expect(read('here/content/shop/jobs/belt.mdx')).toBe(job('Mine.'));
  });

  it('says what is wrong with a name, and lists what stands in', async () => {
    expect(await replaceIn('jobs/bellt')).toMatch(/refused: .*Did you mean jobs\/belt\.mdx\?/);
    expect(await replaceIn()).toContain('No page of the shop stands in');
    await replaceIn('jobs/belt');
    put('here/content/knowledge/jobs/belt.mdx', job('Other.'));
    expect(await replaceIn()).toContain('jobs/belt.mdx  original: changed');
    await replaceIn('jobs/belt', true);
    expect(await replaceIn()).toContain('jobs/belt.mdx  original: as it was');
  });
});

describe('npm run update', () => {
  it('takes engine and knowledge from a folder, leaves the shop alone and names the page to compare', async () => {
    await replaceIn('jobs/belt');
    put('here/content/shop/jobs/belt.mdx', job('Mine.'));
    // Copied by hand before there was a list.
    put('here/content/shop/jobs/cord.mdx', job('My cord.'));
    change();
    const said = await updateFrom('new');
    expect(said).toContain('Version 0.2.0');
    expect(said).toContain('new      content/knowledge/jobs/plug.mdx');
    expect(said).toMatch(/jobs\/belt\.mdx\s+original: content\/knowledge\/jobs\/belt\.mdx\s+before: +before-update/);
    expect(said).toMatch(/jobs\/cord\.mdx\s+original: gone from the knowledge/);
    expect(read('here/content/knowledge/jobs/belt.mdx')).toBe(job('New.'));
    expect(read('here/before-update/content/knowledge/jobs/belt.mdx')).toBe(job('Old.'));
    expect(existsSync(at('here/content/knowledge/jobs/cord.mdx'))).toBe(false);
    expect(existsSync(at('here/src/commands/fuzz.ts'))).toBe(false);
    expect(read('here/content/shop/jobs/belt.mdx')).toBe(job('Mine.'));
    expect(read('here/content/shop/shop.yaml')).toBe('name: Ribera Saws\n');
    expect(read('here/content/shop/jobs/own.mdx')).toBe(job('Only here.'));
    expect(read('here/public/yard.jpg')).toBe('a picture of the shop');
    // It is named until somebody has compared the two, also by the next update.
    expect(await replaceIn()).toContain('jobs/belt.mdx  original: changed');
    expect(await updateFrom('new')).toContain('Nothing is new');
    await replaceIn('jobs/belt', true);
    expect(await replaceIn()).toContain('jobs/belt.mdx  original: as it was');
  });

  const git = spawnSync('git', ['--version']).status === 0;
  it.skipIf(!git).each(['tar', 'tar.gz'])('takes them from an archive that git made: %s', async (format) => {
    change();
    const far = `content/knowledge/explainers/${'why-'.repeat(30)}so.mdx`;
    put(`new/${far}`, job('A long name.'));
    const by = ['-c', 'user.name=A', '-c', 'user.email=a@example.org'];
    for (const args of [
      ['init', '-q'],
      ['add', '.'],
      ['commit', '-qm', 'all'],
      ['archive', '--prefix=almanac/', `--format=${format}`, '-o', at(`new.${format}`), 'HEAD'],
    ])
      expect(spawnSync('git', [...by, ...args], { cwd: at('new') }).status).toBe(0);
    await updateFrom(`new.${format}`);
    expect(read('here/content/knowledge/jobs/belt.mdx')).toBe(job('New.'));
    expect(read(`here/${far}`)).toBe(job('A long name.'));
  });

  it('broken off half-way, goes on and loses nothing of what stood here before', async () => {
    put('here/content/shop/jobs/belt.mdx', job('Mine, copied by hand.'));
    change();
    put('new/src/later.ts', '// new');
    put('new/package-lock.json', '{"new": true}');
    // A folder of somebody's own stands where a file shall be written, behind files that are written before it.
    put('here/src/later.ts/mine.txt', 'mine');
    await expect(updateFrom('new')).rejects.toThrow('later.ts');
    expect(read('here/content/knowledge/jobs/belt.mdx')).toBe(job('New.'));
    rmSync(at('here/src/later.ts'), { recursive: true });
    const said = await updateFrom('new');
    expect(read('here/before-update/content/knowledge/jobs/belt.mdx')).toBe(job('Old.'));
    expect(read('here/before-update/content/knowledge/jobs/cord.mdx')).toBe(job('Cord.'));
    expect(said).toMatch(/jobs\/belt\.mdx\s+original: content\/knowledge\/jobs\/belt\.mdx\s+before: +before-update/);
    expect(said).toContain('npm ci && ');
    // The next one lays aside anew.
    put('new/src/commands/fuzz.ts', '// back');
    await updateFrom('new');
    expect(existsSync(at('here/before-update/content'))).toBe(false);
  });

  it('looks only, when asked to', async () => {
    change();
    expect(await updateFrom('new', true)).toContain('Looked only');
    expect(read('here/content/knowledge/jobs/belt.mdx')).toBe(job('Old.'));
  });

  it('takes nothing from what is no almanac', async () => {
    put('other/package.json', '{}');
    await expect(updateFrom('other')).rejects.toThrow('it holds no package-lock.json');
    await expect(updateFrom('nowhere')).rejects.toThrow('there is no such folder or file');
    put('picture.tar', 'no archive'.repeat(200));
    await expect(updateFrom('picture.tar')).rejects.toThrow('no tar archive');
    expect(read('here/content/knowledge/jobs/belt.mdx')).toBe(job('Old.'));
  });
});

it('an archive that leads out of its folder is refused', () => {
  const head = Buffer.alloc(512);
  head.write('../evil.txt', 0);
  head.write('00000000000', 124);
  head.write('0', 156);
  head.fill(' ', 148, 156);
  head.write(
    head
      .reduce((sum, byte) => sum + byte, 0)
      .toString(8)
      .padStart(6, '0'),
    148,
  );
  expect(() => readTar(Buffer.concat([head, Buffer.alloc(1024)]))).toThrow('leads out of its folder');
});
