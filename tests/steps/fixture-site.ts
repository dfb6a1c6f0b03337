/** Builds a tiny site under fixtures/ into a folder of its own. */
import { execFile } from 'node:child_process';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { buildPlace } from './build-place.ts';

const here = fileURLToPath(new URL('.', import.meta.url));
const astro = fileURLToPath(new URL('../../node_modules/astro/bin/astro.mjs', import.meta.url));

export async function buildFixtureSite(site = 'site'): Promise<string> {
  const folder = await buildPlace('fixture');
  const dist = join(folder, 'dist');
  await promisify(execFile)(
    process.execPath,
    [astro, 'build', '--root', join(here, `fixtures/${site}`), '--outDir', dist],
    {
      env: {
        ...process.env,
        ASTRO_TELEMETRY_DISABLED: '1',
        NODE_ENV: 'production',
        FIXTURE_CACHE: join(folder, 'cache'),
      },
    },
  );
  return dist;
}
