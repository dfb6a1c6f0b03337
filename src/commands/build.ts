/**
 * npm run build                     builds dist/ without serving it
 * npm run build -- --outDir <name>  another folder
 * npm run build -- --verbose        all that is said on the way
 *
 * Astro makes the site's program in a process of its own, or the one it made before is taken; meanwhile content/ is
 * checked and read. Then the pages are made.
 */
import './build/run.ts';
