/**
 * Reading our own program is a good part of what takes little else: what Node made of it is kept. Each thread asks for
 * itself, before it loads the rest.
 */
import { enableCompileCache } from 'node:module';
import { join } from 'node:path';

export function keepCompiled(): void {
  enableCompileCache(join(import.meta.dirname, '../../../node_modules/.cache/almanac-compiled'));
}
