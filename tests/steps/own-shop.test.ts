/** A fresh shop, built from a folder of its own: whole, and with nothing of the demo shop in it. The shop is made up. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { parse } from 'yaml';

const place = mkdtempSync(join(tmpdir(), 'almanac-own-'));
const dist = join(place, 'dist');
const flags = {
  name: 'Ribera Saws',
  address: 'Calle 4; Puebla Nueva',
  phone: '555 010 0199',
  hours: 'Monday to Friday, 8 to 17',
  currency: 'EUR',
  rate: '42.50',
  tax: '21',
  languages: 'en',
};
let built: { status: number | null; text: string };

beforeAll(() => {
  const given = Object.entries(flags).flatMap(([flag, text]) => [`--${flag}`, text]);
  spawnSync(process.execPath, ['src/commands/shop-new.ts', join(place, 'shop'), ...given]);
  const env = { ...process.env, SHOP: join(place, 'shop'), ASTRO_TELEMETRY_DISABLED: '1', NODE_ENV: 'production' };
  const ran = spawnSync(process.execPath, ['node_modules/astro/bin/astro.mjs', 'build', '--outDir', dist], {
    env,
    encoding: 'utf8',
  });
  built = { status: ran.status, text: ran.stdout + ran.stderr };
}, 240_000);
afterAll(() => {
  rmSync(place, { recursive: true, force: true });
  rmSync('content/chosen-shop', { force: true });
});

const pages = () => readdirSync(dist, { recursive: true, encoding: 'utf8' });

it('builds whole, without a machine and in English alone', () => {
  expect(built.status, built.text.slice(-2000)).toBe(0);
  expect(pages()).toEqual(expect.arrayContaining(['index.html', 'sw.js', 'calculators/belt-tension.html']));
  expect(pages().filter((f) => /^es(?:\.html|[\\/])/.test(f))).toEqual([]);
  expect(readFileSync(join(dist, 'shop.html'), 'utf8')).toContain('Ribera Saws');
});

it('holds no name of the demo shop, its place or its machines', () => {
  const demo = parse(readFileSync('content/shop/shop.yaml', 'utf8')) as {
    name: string;
    address: string[];
    phone: string;
  };
  const machines = readdirSync('content/shop/machines').map(
    (file) => (parse(readFileSync(join('content/shop/machines', file), 'utf8')) as { name: string }).name,
  );
  const names = [demo.name, ...demo.address, demo.phone, ...machines, ...machines.map((m) => m.split(' ')[0] ?? '')];
  const texts = pages().filter((f) => ['.html', '.js', '.css', '.txt', '.webmanifest', '.svg'].includes(extname(f)));
  const found = texts.flatMap((file) => {
    const text = readFileSync(join(dist, file), 'utf8');
    return names
      .filter((name) => text.includes(name.replaceAll('&', '&amp;')) || text.includes(name))
      .map((n) => `${file}: ${n}`);
  });
  expect(names.length).toBeGreaterThan(8);
  expect(found).toEqual([]);
});
