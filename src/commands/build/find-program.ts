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

export async function findProgram(project: string, hear: (line: string) => void, stop: AbortSignal): Promise<Program> {
  const key = await programKey(project);
  const kept = await keptProgram(project, key);
  if (kept) return kept;
  const making = await placeToMake(project);
  try {
    await make(project, making, hear, stop);
    await keepProgram(project, key, making);
  } finally {
    await rm(making, { recursive: true, force: true });
  }
  const made = await keptProgram(project, key);
  if (!made) throw new Error(`The site's program was made, and is not in ${keptPrograms(project)}.`);
  return made;
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
