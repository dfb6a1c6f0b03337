/** Broken content, one file at a time, through the content check: told with file and line, never thrown at. */
import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { kindOf } from '../../schemas/kinds.ts';
import { shopFile } from '../../schemas/places.ts';
import { checkContent } from '../../steps/content-check/check-content.ts';
import { knownNames } from '../../steps/content-check/known-names.ts';
import { listFiles } from '../../steps/support/files.ts';
import { projectFolder } from '../support/command.ts';
import type { Found, FuzzOptions } from './part.ts';
import { chance, type Chance } from './random.ts';
import { spoilers, type Spoiler } from './spoilers.ts';

/** Each slip is tried on this many files, as far as there are so many. */
const each = 2;

export async function fuzzContent({ seed }: FuzzOptions): Promise<Found> {
  const folder = await mkdtemp(join(tmpdir(), 'almanac-fuzz-'));
  try {
    for (const part of ['content', 'public'])
      await cp(join(projectFolder, part), join(folder, part), { recursive: true });
    const known = await knownNames(projectFolder);
    const files = (await listFiles(join(folder, 'content'))).map((f) => `content/${f}`);
    const c = chance(seed);
    const faults: string[] = [];
    let [told, silent] = [0, 0];
    const work = spoilers.flatMap((spoiler) => chosen(files, spoiler, c).map((file) => ({ spoiler, file })));
    for (const { spoiler, file } of work) {
      const path = join(folder, file);
      const good = await readFile(path, 'utf8');
      const bad = spoiler.spoil(good);
      await writeFile(path, bad);
      const said = `${spoiler.name}, ${file}`;
      try {
        const problems = await checkContent(folder, known);
        if (problems.length > 0) told += 1;
        else silent += 1;
        if (spoiler.told !== problems.length > 0)
          faults.push(`${said}: ${spoiler.told ? 'not told' : 'refused without need'}`);
        for (const p of problems)
          if (!placed(p, bad)) faults.push(`${said}: told without a place: ${JSON.stringify(p)}`);
      } catch (reason) {
        faults.push(`${said}: ${String(reason)}`);
      }
      await writeFile(path, good);
    }
    return {
      counts: [`${work.length} broken files of ${spoilers.length} kinds: ${told} told, ${silent} taken as they are`],
      faults,
    };
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** Files the slip makes sense on and really changes, drawn at random. */
function chosen(files: readonly string[], { on }: Spoiler, c: Chance): string[] {
  if (on === 'shop') return [shopFile];
  const fit = files.filter((file) => {
    const folder = file.split('/')[2] ?? '';
    if (on === 'machine') return folder === 'machines' && file.endsWith('mp-350.yaml');
    const kind = kindOf(folder);
    return on === 'article'
      ? kind?.ending === 'mdx' && folder === 'jobs'
      : folder === 'hazards' || folder === 'sources';
  });
  return Array.from({ length: Math.min(each, fit.length) }, () => c.oneOf(fit)).filter(
    (f, i, all) => all.indexOf(f) === i,
  );
}

function placed(
  problem: { file: string; line: number; got: string; allowed: string },
  bad: string | Uint8Array,
): boolean {
  const lines = typeof bad === 'string' ? bad.split('\n').length + 1 : Number.POSITIVE_INFINITY;
  return (
    problem.file.startsWith('content/') &&
    Number.isInteger(problem.line) &&
    problem.line >= 1 &&
    problem.line <= Math.max(lines, 400) &&
    problem.got !== '' &&
    problem.allowed !== '' &&
    !/undefined|\[object/.test(problem.got + problem.allowed)
  );
}
