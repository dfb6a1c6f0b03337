/** npm run test:browsers: the main jobs on the built site in Chromium, Firefox and WebKit; one that is missing is a failure. */
import { existsSync } from 'node:fs';
import { buildSite, projectFolder, runNode } from './support/command.ts';

if (!existsSync(`${projectFolder}dist/sw.js`)) {
  const code = await buildSite();
  if (code !== 0) process.exit(code);
}
process.exitCode = await runNode(
  'node_modules/vitest/vitest.mjs',
  ['run', '--config', 'tests/vitest.config.ts', 'tests/engines'],
  { ALMANAC_ENGINES: 'all' },
);
