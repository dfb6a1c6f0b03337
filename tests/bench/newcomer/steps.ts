/** Commands and figures of the newcomer's run: each step once or three times, told as a row of a table. */
import { spawn, spawnSync, type ChildProcess } from 'node:child_process';
import process from 'node:process';

const shell = process.platform === 'win32';
const since = (start: number) => (performance.now() - start) / 1000;

export function row(step: string, seconds: readonly number[], said = ''): void {
  const middle = [...seconds].sort((a, b) => a - b)[Math.floor(seconds.length / 2)] ?? Number.NaN;
  const spread =
    seconds.length > 1 ? ` (${Math.min(...seconds).toFixed(1)} to ${Math.max(...seconds).toFixed(1)})` : '';
  console.log(`| ${step} | ${middle.toFixed(1)} s${spread} | ${said} |`);
}

/** A command as it is typed. Its last line is told; another exit code than the wanted one ends the run. */
export function command(step: string, words: readonly string[], wanted = 0): string {
  const start = performance.now();
  const ran = spawnSync('npm', ['run', '-s', ...words], { encoding: 'utf8', shell, stdio: ['ignore', 'pipe', 'pipe'] });
  const text = (ran.stdout + ran.stderr).trim();
  if (ran.status !== wanted) throw new Error(`${words.join(' ')} ended with ${ran.status}, not ${wanted}:\n${text}`);
  row(step, [since(start)], text.split('\n').at(-1));
  return text;
}

export async function timed(step: string, action: () => Promise<unknown>): Promise<void> {
  const start = performance.now();
  await action();
  row(step, [since(start)]);
}

/** Three times a change and what must be seen of it. Each gives back the seconds it took. */
export async function three(actions: Readonly<Record<string, () => Promise<unknown>>>): Promise<void> {
  const took = new Map<string, number[]>(Object.keys(actions).map((step) => [step, []]));
  for (let run = 0; run < 3; run += 1)
    for (const [step, action] of Object.entries(actions)) {
      const start = performance.now();
      await action();
      took.get(step)?.push(since(start));
    }
  for (const [step, seconds] of took) row(step, seconds);
}

/** A program that goes on, once it has said what `wanted` finds in its words. */
export function started(program: string, words: readonly string[], wanted: RegExp): Promise<[ChildProcess, string]> {
  return new Promise((done, failed) => {
    const child = spawn(program, words, { shell, stdio: ['ignore', 'pipe', 'pipe'] });
    let text = '';
    const hear = (piece: unknown) => {
      text += String(piece);
      const found = wanted.exec(text)?.[1];
      if (found !== undefined) done([child, found]);
    };
    child.stdout.on('data', hear);
    child.stderr.on('data', hear);
    child.on('close', () => failed(new Error(`${program} ${words.join(' ')} ended: ${text}`)));
  });
}
