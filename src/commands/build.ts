/**
 * npm run build                     builds dist/ without serving it
 * npm run build -- --outDir <name>  another folder
 * npm run build -- --verbose        all that is said on the way
 *
 * Astro makes the site's program in a process of its own, or the one it made before is taken; meanwhile content/ is
 * checked and read. Then the pages are made, or those that still say the same are taken from the build before.
 */
import { enableCompileCache } from 'node:module';
import { join } from 'node:path';

// Reading the build's own program is a good part of a build that has little to do: what Node made of it is kept.
enableCompileCache(join(import.meta.dirname, '../../node_modules/.cache/almanac-compiled'));
await import('./build/run.ts');
