/** Files the portable step adds, named after their content so that equal content is one file. */
import { createHash } from 'node:crypto';
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { madeFolder } from './made-files.ts';

export class HashedFiles {
  readonly dist: string;
  readonly written = new Set<string>();
  constructor(dist: string) {
    this.dist = dist;
  }

  /** Writes `_astro/<name>.<hash>.<ending>` and gives that path. */
  async add(name: string, ending: 'js' | 'css', content: string): Promise<string> {
    const hash = createHash('sha256').update(content).digest('base64url').replaceAll(/[-_]/g, '').slice(0, 8);
    const file = `${madeFolder}/${name}.${hash}.${ending}`;
    if (!this.written.has(file)) {
      this.written.add(file);
      await writeFile(join(this.dist, file), content);
    }
    return file;
  }
}
