/** Makes the site one shop's: where pages find its shop.yaml, and only the languages it speaks. */
import { readFileSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { parse } from 'yaml';
import { chosenShop, shopFile, shopFolder } from '../schemas/places.ts';
import { shop as schema } from '../schemas/shop.ts';

/** Languages other than English, each with the folder its pages stand in. */
const folderOf = { es: 'es' } as const;

export function oneShop(): AstroIntegration {
  let file: string;
  return {
    name: 'almanac-shop',
    hooks: {
      'astro:config:setup': ({ config, updateConfig }) => {
        file = join(fileURLToPath(config.root), shopFile);
        updateConfig({
          vite: {
            resolve: {
              alias: [{ find: /^almanac:shop\?raw$/, replacement: `${file}?raw` }],
              // A shop in a folder of its own is reached through a link; its articles must not resolve past it.
              preserveSymlinks: shopFolder === chosenShop,
            },
          },
        });
      },
      // Before links are looked at: one that leads into a language left out is then a broken one, and told.
      'astro:build:done': async ({ dir }) => {
        const { languages } = schema.parse(parse(readFileSync(file, 'utf8')));
        for (const [language, folder] of Object.entries(folderOf))
          if (!(languages as readonly string[]).includes(language))
            for (const name of [folder, `${folder}.html`])
              await rm(join(fileURLToPath(dir), name), { recursive: true, force: true });
      },
    },
  };
}
