/**
 * npm run build                     builds dist/ without serving it
 * npm run build -- --outDir <name>  another folder
 * npm run build -- --verbose        all that is said on the way
 *
 * Astro makes the site's program in a process of its own, or the one it made before is taken; meanwhile content/ is
 * checked and read. Then the pages are made, or those that still say the same are taken from the build before.
 */
import { keepCompiled } from '../steps/support/keep-compiled.ts';

keepCompiled();
await import('./build/run.ts');
