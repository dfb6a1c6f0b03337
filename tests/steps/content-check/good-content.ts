/** A small content folder in which everything is right, to be spoiled in one place at a time. */
import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { checkContent } from '../../../src/steps/content-check/check-content.ts';
import type { Known } from '../../../src/steps/content-check/library.ts';

const fixtures = fileURLToPath(new URL('fixtures/', import.meta.url));
const components = {
  Hazard: ['id'],
  Source: ['id'],
  Term: ['id'],
  Figure: ['name'],
  Calculator: ['topic', 'preset', 'compact', 'id'],
  BothUnits: ['mm'],
};
export const known: Known = {
  components: new Map(Object.entries(components).map(([name, takes]) => [name, new Set(takes)])),
  figures: new Set(['nozzles']),
  topics: new Set(['blade-speed']),
  addresses: new Set(['/', '/jobs/', '/guides/']),
  patterns: [],
};
const today = '2026-06-30';

/** Lays one fixture over the good content, or spoils it in another way, and gives "file:line field: found | wanted". */
export async function problemsOf(spoil?: string | ((folder: string) => Promise<void>)): Promise<string[]> {
  const folder = await mkdtemp(join(tmpdir(), 'almanac-content-'));
  try {
    await cp(join(fixtures, 'good'), folder, { recursive: true });
    if (typeof spoil === 'string') await cp(join(fixtures, spoil), folder, { recursive: true });
    else await spoil?.(folder);
    const problems = await checkContent(folder, known, today);
    return problems
      .map((p) => `${p.file.replace(/^content\/(?:knowledge\/)?/, '')}:${p.line} ${p.field}: ${p.got} | ${p.allowed}`)
      .sort();
  } finally {
    await rm(folder, { recursive: true });
  }
}

/** What is said when one file of the good content is changed. */
export function problemsAfter(file: string, change: (text: string) => string | Uint8Array): Promise<string[]> {
  return problemsOf(async (folder) => {
    const path = join(folder, 'content', file);
    await writeFile(path, change(await readFile(path, 'utf8')));
  });
}
