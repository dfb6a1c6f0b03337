/** What is said before a build begins, and not after it. */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, expect, test } from 'vitest';
import { chromiumHelp, findChromium } from '../../src/commands/support/chromium.ts';
import { readPort } from '../../src/commands/support/port.ts';

const project = fileURLToPath(new URL('../..', import.meta.url));
const named = process.env['CHROMIUM_PATH'];
afterEach(() => {
  if (named === undefined) delete process.env['CHROMIUM_PATH'];
  else process.env['CHROMIUM_PATH'] = named;
});

test('a port is a whole number up to 65535', () => {
  expect(readPort(undefined)).toEqual({ port: 4321 });
  for (const port of [0, 80, 65_535]) expect(readPort(String(port))).toEqual({ port });
  for (const typed of ['abc', '65536', '99999', '-1', '80.5', '1e3'])
    expect(readPort(typed), typed).toEqual({ problem: expect.stringContaining(`PORT is "${typed}"`) as string });
});

test('an odd port is told at once, without a stack trace', () => {
  const run = spawnSync(process.execPath, ['src/commands/start.ts'], {
    cwd: project,
    env: { ...process.env, PORT: 'abc' },
    encoding: 'utf8',
  });
  expect(run.status).toBe(1);
  expect(run.stderr).toBe('PORT is "abc". Give a whole number from 0 to 65535; 0 takes any free port.\n');
  expect(run.stdout).toBe('');
});

test('a folder whose path means something else in an address is told before pages are built', () => {
  const top = mkdtempSync(join(tmpdir(), 'almanac-place-'));
  const check = (folder: string, ...args: string[]) => {
    mkdirSync(join(top, folder, 'src/commands'), { recursive: true });
    const script = join(top, folder, 'src/commands/check-node.mjs');
    cpSync(join(project, 'src/commands/check-node.mjs'), script);
    return spawnSync(process.execPath, [script, ...args], { encoding: 'utf8' });
  };
  for (const folder of ['a#b', '50%', 'p %25 q'])
    expect(check(folder, 'pages').stderr, folder).toContain(`stands in ${join(top, folder)}, and "`);
  expect(check('a#b', 'pages').status).toBe(1);
  expect(check('a#b').status).toBe(0);
  expect(check('a b é', 'pages').status).toBe(0);
  rmSync(top, { recursive: true });
});

test('CHROMIUM_PATH must name a program: a folder or a plain file is told, not passed over', () => {
  const top = mkdtempSync(join(tmpdir(), 'almanac-chromium-'));
  writeFileSync(join(top, 'notes.txt'), '');
  for (const path of [top, join(top, 'notes.txt'), join(top, 'gone')]) {
    process.env['CHROMIUM_PATH'] = path;
    expect(findChromium(), path).toBeUndefined();
    expect(chromiumHelp(), path).toContain(`CHROMIUM_PATH names ${path}`);
  }
  process.env['CHROMIUM_PATH'] = process.execPath;
  expect(findChromium()).toBe(process.execPath);
  rmSync(top, { recursive: true });
});
