/** Runs a program and says how long it took, how much processor time all it started took, and its peak of memory. */
import { spawn } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';

export interface Measured {
  readonly seconds: number;
  /** User and system time of everything started; undefined where the system does not tell. */
  readonly cpu: number | undefined;
  /** Bytes held at once by everything started, looked at twice a second; undefined where the system does not tell. */
  readonly memory: number | undefined;
  readonly code: number | null;
  readonly text: string;
}

const ticks = 500;

export function measure(
  program: string,
  args: readonly string[],
  { cwd, env }: { readonly cwd: string; readonly env?: Readonly<Record<string, string>> },
): Promise<Measured> {
  return new Promise((done, failed) => {
    const start = performance.now();
    const child = spawn(program, args, { cwd, env: { ...process.env, ...env }, stdio: ['ignore', 'pipe', 'pipe'] });
    let text = '';
    let memory = 0;
    const seen = new Map<number, number>();
    const look = () => {
      const all = child.pid === undefined ? [] : family(child.pid);
      memory = Math.max(
        memory,
        all.reduce((sum, one) => sum + one.memory, 0),
      );
      // What a child used is counted with its parent only once it was waited for; the highest figure seen stands.
      for (const one of all) seen.set(one.pid, Math.max(seen.get(one.pid) ?? 0, one.ticks));
    };
    const timer = setInterval(look, ticks);
    child.stdout.on('data', (piece) => (text += String(piece)));
    child.stderr.on('data', (piece) => (text += String(piece)));
    child.on('error', failed);
    child.on('close', (code) => {
      clearInterval(timer);
      const seconds = (performance.now() - start) / 1000;
      const used = [...seen.values()].reduce((sum, n) => sum + n, 0) / 100;
      done({ seconds, cpu: used > 0 ? used : undefined, memory: memory > 0 ? memory : undefined, code, text });
    });
  });
}

interface One {
  readonly pid: number;
  readonly memory: number;
  readonly ticks: number;
}

/** The process and all below it, from /proc; nothing where there is none. */
function family(top: number): One[] {
  const all = new Map<number, { parent: number; one: One }>();
  try {
    for (const name of readdirSync('/proc')) {
      if (!/^\d+$/.test(name)) continue;
      try {
        const stat = readFileSync(`/proc/${name}/stat`, 'utf8');
        const fields = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
        const number = (at: number) => Number(fields[at]);
        const one = { pid: Number(name), memory: number(21) * 4096, ticks: number(11) + number(12) };
        all.set(one.pid, { parent: number(1), one });
      } catch {
        // It ended between the listing and the reading.
      }
    }
  } catch {
    return [];
  }
  const below = (pid: number): boolean => {
    for (let at: number | undefined = pid; at !== undefined && at > 1; at = all.get(at)?.parent)
      if (at === top) return true;
    return false;
  };
  return [...all.values()].map((entry) => entry.one).filter((one) => below(one.pid));
}
