/** The site's program: the one that is kept, or one that Astro makes now, in a process of its own. */
import { spawn } from 'node:child_process';
import { rm } from 'node:fs/promises';
import process from 'node:process';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import {
  keepProgram,
  keptProgram,
  keptPrograms,
  placeToMake,
  programKey,
  type Program,
} from '../../steps/program/program.ts';

const maker = fileURLToPath(new URL('./make-program.ts', import.meta.url));

/** A program on its way. */
export interface Coming {
  readonly program: Promise<Program>;
  /** The same, where it was made before. */
  readonly kept: Program | undefined;
}

/** Gives its answer as soon as the program is found or being made, so that nothing else is begun before. */
export async function findProgram(project: string, hear: (line: string) => void, stop: AbortSignal): Promise<Coming> {
  const key = await programKey(project);
  const kept = await keptProgram(project, key);
  if (kept) return { program: Promise.resolve(kept), kept };
  const making = await placeToMake(project);
  const program = onceMade(project, key, making, make(project, making, hear, stop));
  // Said when it is asked for; nobody hears it before.
  program.catch(() => undefined);
  return { program, kept };
}

/** The folder it was made in is gone with this, whatever came of it. */
async function onceMade(project: string, key: string, making: string, made: Promise<void>): Promise<Program> {
  try {
    await made;
    await keepProgram(project, key, making);
  } finally {
    await rm(making, { recursive: true, force: true });
  }
  const program = await keptProgram(project, key);
  if (!program) throw new Error(`The site's program was made, and is not in ${keptPrograms(project)}.`);
  return program;
}

function make(project: string, folder: string, hear: (line: string) => void, stop: AbortSignal): Promise<void> {
  return new Promise((done, failed) => {
    const child = spawn(process.execPath, [maker, folder], {
      cwd: project,
      stdio: ['ignore', 'pipe', 'inherit'],
      env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', NODE_ENV: 'production', ALMANAC_PROGRAM: folder },
      signal: stop,
    });
    createInterface({ input: child.stdout }).on('line', hear);
    child.on('error', failed);
    child.on('close', (code) => {
      if (code === 0) done();
      else failed(new Error('Astro could not make the site; what it says stands above.'));
    });
  });
}
