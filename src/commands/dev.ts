/** npm run dev: Astro's own server, for writing. Pages show at once what is saved; search comes with a build. */
import { argv } from 'node:process';
import { runAstro } from './support/command.ts';

process.exitCode = await runAstro(['dev', ...argv.slice(2)]);
