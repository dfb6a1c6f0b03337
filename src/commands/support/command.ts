/** Runs one of the project's own tools with the Node that runs this script. */
import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';

export const projectFolder = fileURLToPath(new URL('../../../', import.meta.url));

/** Nothing is reported to anybody from this machine, nor asked of a registry, whatever the command. */
export const silent = { ASTRO_TELEMETRY_DISABLED: '1', ASTRO_DISABLE_UPDATE_CHECK: 'true' };
const environment = { ...process.env, ...silent };

/** Waits for a program and gives its exit code; its output goes to the terminal. */
export function run(
  program: string,
  args: readonly string[],
  extra: Readonly<Record<string, string>> = {},
): Promise<number> {
  return new Promise((done) => {
    const child = spawn(program, args, { cwd: projectFolder, stdio: 'inherit', env: { ...environment, ...extra } });
    child.on('error', (error) => {
      console.error(`${program} could not be started: ${error.message}`);
      done(127);
    });
    child.on('close', (code) => done(code ?? 1));
  });
}

/** The same, quietly: what it says is held back and given with its exit code, for work that goes on beside other work. */
export function runHeldBack(script: string, args: readonly string[]): Promise<{ code: number; said: string }> {
  return new Promise((done) => {
    const child = spawn(process.execPath, [`${projectFolder}${script}`, ...args], {
      cwd: projectFolder,
      stdio: ['ignore', 'pipe', 'pipe'],
      env: { ...environment, ...(process.stdout.isTTY ? { FORCE_COLOR: '1' } : {}) },
    });
    let said = '';
    for (const stream of [child.stdout, child.stderr])
      stream.setEncoding('utf8').on('data', (text: string) => (said += text));
    child.on('error', (error) => done({ code: 127, said: `${script} could not be started: ${error.message}` }));
    child.on('close', (code) => done({ code: code ?? 1, said }));
  });
}

export function runNode(
  script: string,
  args: readonly string[],
  extra?: Readonly<Record<string, string>>,
): Promise<number> {
  return run(process.execPath, [`${projectFolder}${script}`, ...args], extra);
}

export function runAstro(args: readonly string[]): Promise<number> {
  return runNode('node_modules/astro/bin/astro.mjs', args);
}

/** Builds the site in a program of its own, which gives back its memory: see ../build.ts. */
export function buildSite(words: readonly string[] = []): Promise<number> {
  return runNode('src/commands/build/run.ts', words);
}
