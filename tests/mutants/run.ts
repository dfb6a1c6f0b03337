/**
 * npm run mutants: makes each wrong edit of tests/mutants/edits.ts in a copy of the project, runs the tests that
 * concern it, and says which edits nobody noticed. Exit: 0 every edit was noticed, 1 some were not or have no place.
 * With --stryker[=files] Stryker makes the edits instead, with --stryker --sample=200 [--seed=7] on that many lines of
 * the core drawn by lot. It is large and seldom used, so it is put in for the day:
 * npm install --no-save @stryker-mutator/core@10.1.1 @stryker-mutator/vitest-runner@10.1.1
 */
import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process, { argv } from 'node:process';
import { edits, type Edit } from './edits.ts';
import { drawLines } from './sample.ts';
import { projectFolder } from '../../src/commands/support/command.ts';

const copied = ['src', 'tests', 'content', 'package.json', 'tsconfig.json', 'astro.config.mjs'];

function makeCopy(): string {
  const folder = mkdtempSync(join(tmpdir(), 'almanac-mutants-'));
  for (const name of copied) cpSync(join(projectFolder, name), join(folder, name), { recursive: true });
  symlinkSync(join(projectFolder, 'node_modules'), join(folder, 'node_modules'), 'junction');
  return folder;
}

type Outcome = 'noticed' | 'NOT NOTICED' | 'HAS NO PLACE';

function tryEdit(folder: string, edit: Edit): Outcome {
  const file = join(folder, edit.file);
  const right = existsSync(file) ? readFileSync(file, 'utf8') : '';
  if (!right.includes(edit.from)) return 'HAS NO PLACE';
  writeFileSync(file, right.replace(edit.from, edit.to));
  try {
    const args = ['run', '--config', 'tests/vitest.config.ts', '--bail=1', '--reporter=dot', ...edit.tests];
    const run = spawnSync(process.execPath, [join(folder, 'node_modules/vitest/vitest.mjs'), ...args], {
      cwd: folder,
      stdio: 'ignore',
    });
    return run.status === 0 ? 'NOT NOTICED' : 'noticed';
  } finally {
    writeFileSync(file, right);
  }
}

/** Runs Stryker by tests/mutants/stryker.json, on its files or on those asked for. */
function runStryker(files: string): number {
  const program = join(projectFolder, 'node_modules/@stryker-mutator/core/bin/stryker.js');
  if (!existsSync(program)) {
    console.error(
      'Stryker is not here. Put it in for the day: npm install --no-save @stryker-mutator/core@10.1.1 @stryker-mutator/vitest-runner@10.1.1',
    );
    return 1;
  }
  const args = [program, 'run', 'tests/mutants/stryker.json', ...(files === '' ? [] : ['--mutate', files])];
  return spawnSync(process.execPath, args, { cwd: projectFolder, stdio: 'inherit' }).status ?? 1;
}

const flag = (name: string) =>
  argv.find((a) => a === `--${name}` || a.startsWith(`--${name}=`))?.slice(name.length + 3);
const stryker = flag('stryker');
const sample = Number(flag('sample') ?? 0);
if (stryker !== undefined)
  process.exit(
    runStryker(sample > 0 ? drawLines(projectFolder, sample, Number(flag('seed') ?? 1)).join(',') : stryker),
  );

const wanted = edits.filter((e) => argv.slice(2).every((word) => `${e.what} ${e.file}`.includes(word)));
const folder = makeCopy();
const outcomes: Outcome[] = [];
try {
  for (const edit of wanted) {
    const outcome = tryEdit(folder, edit);
    outcomes.push(outcome);
    console.log(`${outcome.padEnd(12)} ${edit.what} (${edit.file})`);
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}
const noticed = outcomes.filter((o) => o === 'noticed').length;
console.log(`\n${noticed} of ${outcomes.length} wrong edits noticed`);
if (noticed < outcomes.length) process.exitCode = 1;
