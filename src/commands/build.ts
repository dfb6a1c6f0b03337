/** npm run build: builds dist/ without serving it. Says little; with -- --verbose all that Astro says. */
import { argv } from 'node:process';
import { buildSite } from './support/command.ts';

process.exitCode = await buildSite(argv.slice(2));
