/**
 * npm run bench:scale                     100, 1000, 3000 and 5000 made-up articles, ours and two general frameworks
 * npm run bench:scale -- 100 1000         other numbers
 * npm run bench:scale -- --ours           without the other frameworks, which are fetched from the package registry
 *
 * Ours is built beside the demo's own content, checks, search, cards and offline list and all. Every first build is a
 * cold one: nothing kept from a build before, ours or theirs. Time on the clock depends on what else the machine does;
 * processor time less so.
 */
import { spawnSync } from 'node:child_process';
import { appendFileSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { mkdir } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process, { argv, env, execPath } from 'node:process';
import { listFiles } from '../../../src/steps/support/files.ts';
import { articleName } from './articles.ts';
import { firstAnswer } from './first-answer.ts';
import { measure, type Measured } from './measure.ts';
import { articleFile, prepareOurs } from './our-site.ts';
import { peers, type Peer } from './peers.ts';

const asked = argv.slice(2);
const named = asked.filter((word) => /^\d+$/.test(word)).map(Number);
const sizes = named.length > 0 ? named : [100, 1000, 3000, 5000];
const place = mkdtempSync(join(env['ALMANAC_BENCH'] ?? tmpdir(), 'almanac-scale-'));

const build = { ASTRO_TELEMETRY_DISABLED: '1', NODE_ENV: 'production' };
const head = ['articles', 'built by', 'time', 'processor', 'peak memory', 'site', 'search index', 'first answer'];

async function megabytes(folder: string, part = ''): Promise<string> {
  const files = (await listFiles(folder)).filter((file) => file.startsWith(part));
  return `${(files.reduce((sum, file) => sum + statSync(join(folder, file)).size, 0) / 1e6).toFixed(1)} MB`;
}

function row(size: number, name: string, { seconds, cpu, memory }: Measured, rest: readonly string[]): void {
  const figures = [
    `${seconds.toFixed(1)} s`,
    cpu === undefined ? 'not told' : `${cpu.toFixed(1)} s`,
    memory === undefined ? 'not told' : `${(memory / 1e9).toFixed(2)} GB`,
  ];
  console.log(`| ${[size, name, ...figures, ...rest].join(' | ')} |`);
}

function whole(made: Measured, name: string): Measured {
  if (made.code === 0) return made;
  throw new Error(`${name} did not build: ${made.text.slice(-2000)}`);
}

async function ours(size: number): Promise<void> {
  const folder = join(place, 'ours');
  await prepareOurs(folder, size);
  const once = async () =>
    whole(await measure(execPath, ['src/commands/build.ts'], { cwd: folder, env: build }), 'Bench Almanac');
  const made = await once();
  const dist = join(folder, 'dist');
  const answer = await firstAnswer(dist, `w${(size - 1).toString(36)}ord`);
  row(size, 'Bench Almanac', made, [
    await megabytes(dist),
    await megabytes(dist, 'pagefind/'),
    answer === undefined ? 'no Chromium' : `${answer.toFixed(2)} s`,
  ]);
  appendFileSync(join(folder, articleFile(0)), '\nOne more sentence, written later.\n');
  row(size, 'the same, one article edited', await once(), ['', '', '']);
  if (!readFileSync(join(dist, `explainers/${articleName(0)}.html`), 'utf8').includes('written later'))
    throw new Error('The edit is not there.');
  rmSync(folder, { recursive: true, force: true });
}

async function theirs(size: number, peer: Peer, folder: string): Promise<void> {
  await peer.prepare(folder, size);
  for (const cache of peer.caches) rmSync(join(folder, cache), { recursive: true, force: true });
  const made = whole(await measure(execPath, peer.build, { cwd: folder, env: build }), peer.name);
  row(size, peer.name, made, [await megabytes(join(folder, peer.out)), '', '']);
  rmSync(join(folder, peer.out), { recursive: true, force: true });
}

async function install(peer: Peer): Promise<string> {
  const folder = join(place, peer.name.replace(/\W.*/, '').toLowerCase());
  await mkdir(folder, { recursive: true });
  const about = { name: 'peer', private: true, type: 'module', dependencies: peer.packages };
  writeFileSync(join(folder, 'package.json'), JSON.stringify(about));
  const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';
  const ran = spawnSync(npm, ['install', '--no-audit', '--no-fund', '--loglevel=error'], {
    cwd: folder,
    stdio: 'inherit',
  });
  if (ran.status !== 0) throw new Error(`${peer.name} could not be installed.`);
  return folder;
}

try {
  const others = asked.includes('--ours') ? [] : peers;
  const folders = new Map<Peer, string>();
  for (const peer of others) folders.set(peer, await install(peer));
  console.log(`| ${head.join(' | ')} |\n|${'---|'.repeat(head.length)}`);
  for (const size of sizes) {
    await ours(size);
    for (const [peer, folder] of folders) await theirs(size, peer, folder);
  }
} finally {
  rmSync(place, { recursive: true, force: true });
}
