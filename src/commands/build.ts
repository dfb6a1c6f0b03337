/** npm run build: builds dist/ without serving it. */
import { argv } from 'node:process';
import { runAstro } from './support/command.ts';

process.exitCode = await runAstro(['build', ...argv.slice(2)]);
