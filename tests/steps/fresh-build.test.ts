/** A build takes the place of the site before it whole, or not at all. */
import { spawn } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import { mkdir, readdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { buildPlace } from './build-place.ts';
import { FreshFolder } from '../../src/steps/support/fresh-folder.ts';

let top: string;
const at = (path: string) => join(top, path);

beforeEach(async () => {
  top = await buildPlace('fresh');
});
afterEach(() => rm(top, { recursive: true }));

describe('the fresh folder', () => {
  /** No process has it: the numbers end below. */
  const gone = 99_999_999;
  const site = async (folder: string, text: string) => {
    await mkdir(at(folder));
    await writeFile(at(`${folder}/index.html`), text);
  };
  const shown = () => readFile(at('dist/index.html'), 'utf8');

  test('takes the place of the old site and leaves nothing beside it', async () => {
    await site('dist', 'old');
    const fresh = await FreshFolder.beside(at('dist'));
    await mkdir(fresh.path);
    await writeFile(join(fresh.path, 'index.html'), 'new');
    expect(await shown()).toBe('old');
    await fresh.takePlace();
    expect(await shown()).toBe('new');
    expect(await readdir(top)).toEqual(['dist']);
  });

  test('leaves the old site when there is nothing whole to put there', async () => {
    await site('dist', 'old');
    await expect((await FreshFolder.beside(at('dist'))).takePlace()).rejects.toThrow();
    expect(await shown()).toBe('old');
  });

  test('clears away what an interrupted build left, and nothing of a build that still runs', async () => {
    await site('dist', 'old');
    await site(`.dist.new-${gone}`, 'half');
    await site(`.dist.new-${process.ppid}`, 'at work');
    await site('.other.new-1', 'not ours');
    await FreshFolder.beside(at('dist'));
    expect((await readdir(top)).sort()).toEqual([`.dist.new-${process.ppid}`, '.other.new-1', 'dist'].sort());
  });

  test('puts the old site back when a build was stopped between the two moves', async () => {
    await site(`.dist.old-${gone}`, 'old');
    await FreshFolder.beside(at('dist'));
    expect(await shown()).toBe('old');
  });
});

describe('a build', () => {
  const astro = fileURLToPath(new URL('../../node_modules/astro/bin/astro.mjs', import.meta.url));
  const root = fileURLToPath(new URL('fixtures/small-site/', import.meta.url));
  const start = () =>
    spawn(process.execPath, [astro, 'build', '--root', root, '--outDir', at('dist')], {
      env: {
        ...process.env,
        ASTRO_TELEMETRY_DISABLED: '1',
        NODE_ENV: 'production',
        NO_COLOR: '1',
        FIXTURE_CACHE: at('cache'),
        FIXTURE_CONTENT: at('articles'),
      },
    });
  const build = () =>
    new Promise<{ code: number | null; text: string }>((done) => {
      const child = start();
      let text = '';
      child.stdout.on('data', (piece) => (text += String(piece)));
      child.stderr.on('data', (piece) => (text += String(piece)));
      child.on('close', (code) => done({ code, text }));
    });
  const half = () => readdirSync(top).find((name) => name.startsWith('.dist.new-'));

  test('follows renamed articles, and leaves the site alone when it fails or is killed', async () => {
    await mkdir(at('articles'));
    await writeFile(at('articles/cord.md'), 'Pull **slowly**.');
    expect((await build()).code).toBe(0);
    expect(await readFile(at('dist/cord.html'), 'utf8')).toContain('<strong>slowly</strong>');

    // The same words under another ending: nothing remembered may stand in their way.
    await rename(at('articles/cord.md'), at('articles/cord.mdx'));
    const whole = (await readdir(at('dist'), { recursive: true })).sort();
    const stopped = start();
    const ended = new Promise((done) => stopped.on('close', done));
    while (!half() && stopped.exitCode === null) await new Promise((done) => setTimeout(done, 20));
    stopped.kill('SIGKILL');
    await ended;
    expect(half()).toBeDefined();
    expect((await readdir(at('dist'), { recursive: true })).sort()).toEqual(whole);

    expect((await build()).code).toBe(0);
    expect(await readFile(at('dist/cord.html'), 'utf8')).toContain('<strong>slowly</strong>');
    expect(existsSync(at('dist/sw.js'))).toBe(true);
    expect(half()).toBeUndefined();

    await writeFile(at('articles/cord.mdx'), 'See [the belt](/belt/).');
    const failed = await build();
    expect(failed.code).toBe(1);
    expect(failed.text).toContain('cord.html -> /belt/  (no such page or file)');
    expect(failed.text).toContain('The site built before stands as it was.');
    expect(failed.text).not.toMatch(/^\s+at .*:\d+:\d+/m);
    expect((await readdir(at('dist'), { recursive: true })).sort()).toEqual(whole);
    expect(half()).toBeUndefined();
  }, 180_000);
});
