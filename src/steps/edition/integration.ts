/** Tells the pages their edition, and writes it into the built folder, where a command can read it back. */
import { writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { programWanted } from '../support/program-wanted.ts';
import { virtualModule } from '../support/virtual-module.ts';
import { editionName, editionOf, type Edition } from './edition.ts';

/** In the built folder: one line, like 2026-11-25-0f3a9c1d. */
export const editionFile = 'edition.txt';

export function namedEdition(): AstroIntegration {
  let edition: Edition;
  return {
    name: 'almanac-edition',
    hooks: {
      'astro:config:setup': async ({ config, updateConfig }) => {
        if (programWanted() !== undefined) return;
        edition = await editionOf(fileURLToPath(config.root));
        const code = () => `export const edition = ${JSON.stringify(edition)};`;
        updateConfig({ vite: { plugins: [virtualModule('almanac:edition', code)] } });
      },
      'astro:build:done': async ({ dir }) => {
        if (programWanted() !== undefined) return;
        await writeFile(new URL(editionFile, dir), `${editionName(edition)}\n`);
      },
    },
  };
}
