/**
 * npm run bench               how many operations a second the core does, and against plain loops where one is given;
 *                             then how long a key press takes in each calculator of the site in dist,
 *                             and a click in each search for a fault
 * npm run bench -- engine     also how far off an engine's speed is heard
 * npm run bench -- belt       only the files whose name holds "belt"
 * npm run bench -- keys belt       only the key presses, of the calculators whose name holds "belt"; SITE_DIST names another folder than dist
 * npm run bench -- clicks starts   only the answers to a check, of the searches for a fault whose name holds "starts"
 * (npm run bench:scale builds whole sites: tests/bench/scale/run.ts)
 */
import { readdir } from 'node:fs/promises';
import { pathToFileURL } from 'node:url';
import { join } from 'node:path';
import { benchClicks } from './clicks.ts';
import { benchKeys } from './keys.ts';

interface Bench {
  readonly name: string;
  /** Does the work once and says how many operations that was. */
  readonly run: () => number;
  readonly plain?: () => number;
}

const repeats = 7;
const notCore = ['run.ts', 'keys.ts', 'clicks.ts'];
const dist = process.env['SITE_DIST'] ?? join(import.meta.dirname, '../../dist');

/** Operations a second: the middle of several runs, after one that warms up. */
function speed(work: () => number): number {
  work();
  const rates = Array.from({ length: repeats }, () => {
    const start = performance.now();
    const operations = work();
    return (operations / (performance.now() - start)) * 1000;
  }).sort((a, b) => a - b);
  return rates[Math.floor(repeats / 2)] ?? 0;
}

async function core(only: string | undefined): Promise<void> {
  const files = (await readdir(import.meta.dirname)).filter(
    (f) => f.endsWith('.ts') && !notCore.includes(f) && (only === undefined || f.includes(only)),
  );
  for (const file of files.sort()) {
    const { benches, figures } = (await import(pathToFileURL(join(import.meta.dirname, file)).href)) as {
      benches: readonly Bench[];
      /** Figures other than speed, line by line. */
      figures?: () => Iterable<string>;
    };
    for (const { name, run, plain } of benches) {
      const ours = speed(run);
      const ratio = plain ? `, ${(speed(plain) / ours).toFixed(1)} times slower than a plain loop` : '';
      console.log(`${name}: ${Math.round(ours).toLocaleString('en')} a second${ratio}`);
    }
    for (const line of figures?.() ?? []) console.log(line);
  }
}

const [first, ...rest] = process.argv.slice(2);
if (first === 'keys') await benchKeys(dist, rest);
else if (first === 'clicks') await benchClicks(dist, rest);
else {
  await core(first);
  if (first === undefined) {
    await benchKeys(dist, []);
    await benchClicks(dist, []);
  }
}
