/** npm run check: types only, pages and scripts. */
import { argv } from 'node:process';
import { runAstro } from './support/command.ts';

process.exitCode = await runAstro(['check', ...argv.slice(2)]);
