/** npm run dev: Astro's own server, for writing. Pages, search and the content check's findings follow what is saved. */
import { argv } from 'node:process';
import { runAstro } from './support/command.ts';

process.exitCode = await runAstro(['dev', ...argv.slice(2)]);
