/** For the page about writing: of each kind of content its shortest file, as it is written. */
import { join } from 'node:path';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { first, splitName } from '../../words/lang.ts';
import { kinds } from '../../schemas/kinds.ts';
import type { ContentFile } from '../content-check/content-file.ts';
import { virtualModule } from '../support/virtual-module.ts';

export interface Sample {
  /** "kickback", "es/cutting-wet" */
  readonly id: string;
  /** From the project's folder. */
  readonly file: string;
  readonly text: string;
}

/**
 * A kind of which the site has no file is not there.
 * @param files what makes up the site
 */
export function samplesOf(projectFolder: string, files: readonly ContentFile[]): Readonly<Record<string, Sample>> {
  const samples: Record<string, Sample> = {};
  for (const file of files) {
    if (!Object.hasOwn(kinds, file.folder) || file.draft || splitName(file.id).lang !== first) continue;
    const text = readFileSync(join(projectFolder, file.path), 'utf8').trimEnd();
    const shortest = samples[file.folder];
    if (!shortest || text.length < shortest.text.length)
      samples[file.folder] = { id: file.id, file: file.path.replace(/^content\/chosen-shop\//, ''), text };
  }
  return samples;
}

export function samples(): AstroIntegration {
  return {
    name: 'almanac-samples',
    hooks: {
      'astro:config:setup': ({ config, updateConfig }) => {
        const folder = fileURLToPath(config.root);
        const code = async () => {
          const { readContent } = await import('../content-check/check-content.ts');
          return `export default ${JSON.stringify(samplesOf(folder, await readContent(folder)))};`;
        };
        updateConfig({ vite: { plugins: [virtualModule('almanac:samples', code)] } });
      },
    },
  };
}
