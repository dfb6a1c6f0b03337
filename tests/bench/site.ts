/** Builds whole sites of many articles, to see that the time grows no faster than the articles. */
import { spawnSync } from 'node:child_process';
import { cp, mkdir, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { listFiles } from '../../src/steps/support/files.ts';
import { projectFolder } from '../../src/commands/support/command.ts';

/** Inside the project, so that the copy finds its packages; git ignores the folder. */
const place = join(projectFolder, '.astro', 'bench-site');

export async function benchSites(sizes: readonly number[]): Promise<void> {
  for (const size of sizes) {
    await prepare(size);
    const start = performance.now();
    const built = spawnSync(
      process.execPath,
      [join(projectFolder, 'node_modules/astro/bin/astro.mjs'), 'build', '--root', place],
      {
        env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1' },
        encoding: 'utf8',
      },
    );
    const seconds = (performance.now() - start) / 1000;
    if (built.status !== 0) throw new Error(built.stdout.slice(-2000) + built.stderr.slice(-2000));
    const files = await listFiles(join(place, 'dist'));
    console.log(
      `${size} articles added: ${seconds.toFixed(1)} s, ${((seconds / size) * 1000).toFixed(0)} ms each; ${files.length} files`,
    );
  }
  await rm(place, { recursive: true });
}

/** The demo shop with copies of its jobs under new titles, each with a word of its own. */
async function prepare(size: number): Promise<void> {
  await rm(place, { recursive: true, force: true });
  await mkdir(place, { recursive: true });
  for (const part of ['src', 'content', 'public', 'astro.config.mjs', 'package.json', 'tsconfig.json'])
    await cp(join(projectFolder, part), join(place, part), { recursive: true });
  const jobs = join(place, 'content/knowledge/jobs');
  const models = await Promise.all((await readdir(jobs)).map((f) => readFile(join(jobs, f), 'utf8')));
  for (let i = 0; i < size; i++) {
    const model = models[i % models.length] ?? '';
    const title = `title: Copy ${i} of a job`;
    await writeFile(
      join(jobs, `copy-${i}.mdx`),
      `${model.replace(/^title: .*$/m, title)}\n\nIts own word is wort${i.toString(36)}x.\n`,
    );
  }
}
