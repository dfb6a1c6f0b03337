/** Run by find-program.ts: Astro makes the program alone. It reads no content, so nothing of it is gathered either. */
import { join } from 'node:path';
import { argv } from 'node:process';
import { build } from 'astro';
import { clientFolder } from '../../steps/program/program.ts';

const [, , folder = ''] = argv;
await build({ outDir: join(folder, clientFolder) }, { sync: false } as object);
