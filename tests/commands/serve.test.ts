import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { get } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { serveFolder, type Serving } from '../../src/commands/support/serve.ts';

let top: string;
let serving: Serving;

beforeAll(async () => {
  top = await mkdtemp(join(tmpdir(), 'almanac-serve-'));
  await mkdir(join(top, 'site/jobs'), { recursive: true });
  await writeFile(join(top, 'secret.txt'), 'secret');
  await writeFile(join(top, 'site-secret.txt'), 'secret');
  const files = {
    'index.html': 'start',
    'jobs.html': 'list',
    'jobs/belt.html': 'belt',
    '404.html': 'not here',
    'a.woff2': 'font',
    'a b#c.html': 'odd name',
    'm.webmanifest': '{}',
  };
  for (const [name, text] of Object.entries(files)) await writeFile(join(top, 'site', name), text);
  serving = await serveFolder(join(top, 'site'), { base: '/kb/' });
});
afterAll(async () => {
  await serving.close();
  await rm(top, { recursive: true });
});

/** The path goes out as written; fetch would tidy "../" away before the server saw it. */
function ask(path: string, method = 'GET'): Promise<{ status: number; type: string; location: string; body: string }> {
  const { port } = new URL(serving.address);
  return new Promise((done, failed) => {
    get({ port, host: 'localhost', path, method }, (response) => {
      let body = '';
      response.on('data', (piece) => (body += String(piece)));
      response.on('end', () =>
        done({
          status: response.statusCode ?? 0,
          type: response.headers['content-type'] ?? '',
          location: response.headers.location ?? '',
          body,
        }),
      );
    }).on('error', failed);
  });
}

test('a page is found with ending, without ending, and in its folder', async () => {
  expect((await ask('/kb/')).body).toBe('start');
  expect((await ask('/kb/jobs/belt.html')).body).toBe('belt');
  expect((await ask('/kb/jobs/belt')).body).toBe('belt');
  expect((await ask('/kb/jobs/belt?x=1')).body).toBe('belt');
  expect((await ask('/kb/a%20b%23c.html')).body).toBe('odd name');
});

test('an address with a slash at the end is sent on to the page, query and all, since links there are relative', async () => {
  expect(await ask('/kb/jobs/belt/?x=1')).toMatchObject({ status: 302, location: '/kb/jobs/belt.html?x=1' });
  expect(await ask('/kb')).toMatchObject({ status: 302, location: '/kb/' });
});

test('files come with their type', async () => {
  expect((await ask('/kb/a.woff2')).type).toBe('font/woff2');
  expect((await ask('/kb/m.webmanifest')).type).toContain('application/manifest+json');
  expect((await ask('/kb/jobs/belt.html')).type).toContain('text/html');
});

test('an unknown address answers 404 with the page for it', async () => {
  expect(await ask('/kb/nothing')).toMatchObject({ status: 404, body: 'not here' });
});

test('nothing above the folder is served, however it is asked for', async () => {
  for (const path of [
    '/kb/../secret.txt',
    '/kb/%2e%2e/secret.txt',
    '/kb/..%2fsecret.txt',
    '/kb/jobs/../../secret.txt',
    '/kb/..%5csecret.txt',
    '/kb//secret.txt',
    '/kb/../site-secret.txt',
    '/secret.txt',
    '/kb/%00',
    '/kb/%zz',
  ])
    expect((await ask(path)).body, path).not.toContain('secret');
});

test('only reading is served', async () => {
  expect((await ask('/kb/', 'POST')).status).toBe(405);
  expect((await ask('/kb/', 'HEAD')).status).toBe(200);
});

test('a port in use is passed over', async () => {
  const port = Number(new URL(serving.address).port);
  const second = await serveFolder(join(top, 'site'), { port });
  expect(Number(new URL(second.address).port)).not.toBe(port);
  await second.close();
});
