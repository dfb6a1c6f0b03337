/**
 * npm test: builds the site, checks types, rules and layout of the code, runs every test, and ends with one line,
 * "N passed, N failed", over all of it. A missing Chromium is installed only after saying so: at a terminal it
 * asks; --install and --no-install answer beforehand.
 */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromiumHelp, findOrInstallChromium } from './support/chromium.ts';
import { buildSite, runAstro, runHeldBack, runNode } from './support/command.ts';
import { countTests, longestFiles, passedAtSecondTry, type Count } from './support/count-tests.ts';

const countOf = (what: string, code: number): Count => {
  if (code !== 0) console.error(`-- ${what}: failed`);
  return code === 0 ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };
};

async function step(what: string, work: () => Promise<number>): Promise<Count> {
  console.log(`\n== ${what}`);
  return countOf(what, await work());
}

/** A step that goes on beside another: begun at once, told when its turn comes. */
function beside(what: string, script: string, args: readonly string[]): () => Promise<Count> {
  const running = runHeldBack(script, args);
  return () =>
    step(what, async () => {
      const { code, said } = await running;
      process.stdout.write(said);
      return code;
    });
}

async function runTests(chromium: string | undefined): Promise<Count> {
  console.log('\n== Tests');
  const folder = mkdtempSync(join(tmpdir(), 'almanac-tests-'));
  const report = join(folder, 'report.json');
  try {
    const args = [
      'run',
      '--config',
      'tests/vitest.config.ts',
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${report}`,
    ];
    const code = await runNode('node_modules/vitest/vitest.mjs', args, {
      ALMANAC_ONE_BROWSER: 'yes',
      ALMANAC_RUNS: 'full',
      ...(chromium ? { CHROMIUM_PATH: chromium } : {}),
    });
    const json = readFileSync(report, 'utf8');
    console.log(`Longest: ${longestFiles(json).join(', ')}`);
    for (const one of passedAtSecondTry(json)) console.log(`Passed only at the second try: ${one}`);
    const count = countTests(json);
    // Vitest can end badly with every test green, for example on an error outside any test.
    return code !== 0 && count.failed === 0 ? { ...count, failed: 1 } : count;
  } catch (reason) {
    console.error('The test run left no report:', reason);
    return { passed: 0, failed: 1 };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const said = (flag: string) => process.argv.includes(flag);
const chromium = await findOrInstallChromium(said('--install') ? 'yes' : said('--no-install') ? 'no' : 'ask');
if (!chromium) console.error(chromiumHelp());
// The build uses one core, more or less, and so do the types; the layout and the rules take the other. The rules come
// after Astro has written the types they read.
const layout = beside('Layout of code', 'node_modules/prettier/bin/prettier.cjs', [
  '--check',
  '--log-level=warn',
  'src',
  'tests',
  'astro.config.mjs',
]);
const counts = [
  await step('Build', buildSite),
  await step('Types of the content', () => runAstro(['sync', '--silent'])),
];
const rules = beside('Rules for code', 'node_modules/eslint/bin/eslint.js', [
  '-c',
  'tests/eslint.config.mjs',
  'src',
  'tests',
]);
counts.push(await step('Types', () => runAstro(['check', '--minimumFailingSeverity', 'error'])));
counts.push(await rules(), await layout(), await runTests(chromium));
const passed = counts.reduce((sum, c) => sum + c.passed, 0);
const failed = counts.reduce((sum, c) => sum + c.failed, 0);
console.log(`\n${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
