/**
 * npm run bench:audit              audits pages of the site in dist as a phone on a slow line: speed, accessibility,
 *                                  good practice, search engines; three runs each, the middle one told
 * npm run bench:audit -- jobs/     only the pages whose address begins so
 *
 * The auditing program is put in for it, into a folder of its own outside the project, and kept there. Network and
 * processor are simulated by it, but how long scripts hold the page is reckoned from what they took here: a busy machine
 * tells more than a quiet one, so the load is told beside. SITE_DIST names another folder than dist; AUDIT_RUNS other
 * than three runs; ALMANAC_BENCH where the program and the whole reports are kept.
 */
import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { argv, env, execPath, platform } from 'node:process';
import { chromiumHelp, findChromium } from '../../../src/commands/support/chromium.ts';
import { serveFolder } from '../../../src/commands/support/serve.ts';
import { asRoot } from '../../e2e/support/browser-options.ts';
import { goals, type Goal } from './goals.ts';
import { complaintsOf, figuresOf, type Figures, type Report } from './report.ts';

const version = '13.5.0';
const runs = Number(env['AUDIT_RUNS'] ?? 3);
const dist = env['SITE_DIST'] ?? join(import.meta.dirname, '../../../dist');
const place = join(env['ALMANAC_BENCH'] ?? tmpdir(), 'almanac-audit');

/** The program's main file, fetched from the package registry the first time. */
function install(): string {
  const folder = join(place, version);
  const main = join(folder, 'node_modules/lighthouse/cli/index.js');
  if (existsSync(main)) return main;
  mkdirSync(folder, { recursive: true });
  writeFileSync(
    join(folder, 'package.json'),
    JSON.stringify({ name: 'audit', private: true, dependencies: { lighthouse: version } }),
  );
  const npm = platform === 'win32' ? 'npm.cmd' : 'npm';
  const ran = spawnSync(npm, ['install', '--no-audit', '--no-fund', '--loglevel=error'], {
    cwd: folder,
    stdio: 'inherit',
    shell: platform === 'win32',
  });
  if (ran.status !== 0 || !existsSync(main)) throw new Error(`lighthouse ${version} could not be installed.`);
  return main;
}

/** One run of the audit, in a browser of its own with nothing kept from before. */
function audit(main: string, address: string, into: string, browser: string): Promise<Report> {
  const flags = ['--headless=new', ...asRoot()].join(' ');
  const words = ['--quiet', '--no-enable-error-reporting', '--output=json', `--output-path=${into}`];
  return new Promise((done, failed) => {
    const child = spawn(execPath, [main, address, ...words, `--chrome-flags=${flags}`], {
      stdio: ['ignore', 'ignore', 'pipe'],
      env: { ...env, CHROME_PATH: browser },
    });
    let said = '';
    child.stderr.on('data', (piece) => (said += String(piece)));
    child.on('error', failed);
    child.on('close', (code) => {
      if (code === 0) done(JSON.parse(readFileSync(into, 'utf8')) as Report);
      else failed(new Error(`The audit of ${address} failed: ${said.slice(-1000)}`));
    });
  });
}

const hundredths = (part: number) => Math.round(part * 100);

function row({ page, speed }: Goal, all: readonly Figures[]): string {
  const f = all[Math.floor(all.length / 2)] as Figures;
  const every = all.map((one) => hundredths(one.speed)).join(' ');
  const speeds = `${hundredths(f.speed)} (${every})${hundredths(f.speed) < speed ? ' LOW' : ''}`;
  const times = [f.firstPaint, f.largestPaint, f.blocked].map((ms) => (ms / 1000).toFixed(2));
  const rest = [f.accessible, f.practice, f.found].map(hundredths);
  return `| ${[page, speeds, ...times, f.shift.toFixed(3), ...rest, loadavg()[0]?.toFixed(1)].join(' | ')} |`;
}

if (!existsSync(join(dist, 'sw.js'))) throw new Error('There is no dist yet. Run npm run build first.');
const browser = findChromium();
if (browser === undefined) throw new Error(chromiumHelp());
const main = install();
const asked = goals.filter(({ page }) => argv.length < 3 || argv.slice(2).some((start) => page.startsWith(start)));
const serving = await serveFolder(dist);
const head = [
  'page',
  'speed',
  'first paint [s]',
  'largest [s]',
  'blocked [s]',
  'shift',
  'access',
  'practice',
  'search',
];
console.log(`| ${[...head, 'load'].join(' | ')} |\n|${'---|'.repeat(head.length + 1)}`);
const complaints: string[] = [];
try {
  for (const goal of asked) {
    const reports: Report[] = [];
    for (let n = 0; n < runs; n += 1) {
      const into = join(place, `${goal.page.replaceAll('/', '_')}.${n}.json`);
      reports.push(await audit(main, serving.address + goal.page, into, browser));
    }
    console.log(
      row(
        goal,
        reports.map(figuresOf).sort((a, b) => a.speed - b.speed),
      ),
    );
    complaints.push(...new Set(reports.flatMap(complaintsOf).map((line) => `${goal.page}: ${line}`)));
  }
} finally {
  await serving.close();
}
for (const line of complaints) console.log(line);
console.log(`Whole reports: ${place}`);
