/** Runs one of the project's own tools with the Node that runs this script. */
import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';

export const projectFolder = fileURLToPath(new URL('../../../', import.meta.url));

/** Nothing is reported to anybody from this machine, whatever the command. */
const environment = { ...process.env, ASTRO_TELEMETRY_DISABLED: '1' };

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

export function buildSite(): Promise<number> {
  return runAstro(['build']);
}
