/** Makes the site one shop's: where pages find its shop.yaml, its color and mark. */
import { readFileSync } from 'node:fs';
import { writeFile } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import type { Plugin } from 'vite';
import { parse } from 'yaml';
import { typeOf } from '../browser/address/types.ts';
import { chosenShop, shopFile, shopFolder } from '../schemas/places.ts';
import { shop as schema, type Shop } from '../schemas/shop.ts';
import { markFiles } from './look/mark.ts';
import { token, tokens, withColor } from './look/tokens.ts';

export const shopOf = (project: string): Shop => schema.parse(parse(readFileSync(join(project, shopFile), 'utf8')));

const marksOf = (project: string) => markFiles(project, shopOf(project).mark, token(tokens(), 'paper').light);

/** Writes every file of the site that shows the shop's mark. */
async function addMarks(dist: string, project: string): Promise<void> {
  for (const [name, bytes] of await marksOf(project)) await writeFile(join(dist, name), bytes);
}

export function oneShop(): AstroIntegration {
  let project: string;
  const shop = (): Shop => shopOf(project);
  return {
    name: 'almanac-shop',
    hooks: {
      'astro:config:setup': ({ config, updateConfig }) => {
        project = fileURLToPath(config.root);
        updateConfig({
          vite: {
            plugins: [shopsColor(shop)],
            resolve: {
              alias: [{ find: /^almanac:shop\?raw$/, replacement: `${join(project, shopFile)}?raw` }],
              // A shop in a folder of its own is reached through a link; its articles must not resolve past it.
              preserveSymlinks: shopFolder === chosenShop,
            },
          },
        });
      },
      'astro:server:setup': ({ server }) => {
        server.middlewares.use((request, response, next) => {
          const name = basename((request.url ?? '').split('?')[0] ?? '');
          if (!/^(?:mark|apple-touch-icon)[-\w]*\.(?:svg|png)$/.test(name)) return next();
          marksOf(project).then((files) => {
            const bytes = files.get(name);
            if (!bytes) return next();
            response.setHeader('content-type', typeOf(name) ?? 'application/octet-stream');
            response.end(bytes);
          }, next);
        });
      },
      'astro:build:done': async ({ dir }) => {
        await addMarks(fileURLToPath(dir), project);
      },
    },
  };
}

/** A broken shop.yaml is the content check's to report; until it is mended the site keeps the almanac's own color. */
function shopsColor(shop: () => Shop): Plugin {
  const own = (): string | undefined => {
    try {
      return shop().color;
    } catch {
      return undefined;
    }
  };
  return {
    name: 'almanac-shop-color',
    enforce: 'pre',
    transform: {
      filter: { id: /[\\/]src[\\/]styles[\\/]tokens\.css$/ },
      handler(code) {
        const color = own();
        return color === undefined ? null : { code: withColor(code, color), map: null };
      },
    },
  };
}
