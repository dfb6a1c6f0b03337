/** Under "npm run dev": the content check's findings on every page, what is a draft, and search over the pages as they stand. */
import { realpathSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { shopFolder } from '../../schemas/places.ts';
import type { Known } from '../content-check/library.ts';
import { browserSources } from '../support/browser-sources.ts';

export interface WritingOptions {
  /** What articles may name; without it, what the project holds. */
  readonly known?: Known;
  /** Folder in which content/ stands; without it, the site's own. */
  readonly project?: string;
}

export function whileWriting(options: WritingOptions = {}): AstroIntegration {
  const { known } = options;
  let project: string;
  return {
    name: 'almanac-while-writing',
    hooks: {
      'astro:config:setup': ({ config, command, injectScript }) => {
        project = options.project ?? fileURLToPath(config.root);
        if (command === 'dev') injectScript('page', `import ${JSON.stringify(browserSources.writing)};`);
      },
      'astro:server:setup': async ({ server }) => {
        // Loaded here: a build has no use for it.
        const { checkedFiles, draftPages, Findings, knownNames, LiveSearch, pageOf, standIn } =
          await import('./live.ts');
        const findings = new Findings(async () => {
          const { problems, all } = await checkedFiles(project, known ?? (await knownNames(project)));
          return { problems, drafts: draftPages(all) };
        });
        const address = () => {
          const at = server.httpServer?.address();
          return typeof at === 'object' && at !== null ? `http://localhost:${at.port}/` : undefined;
        };
        const search = new LiveSearch(project, address);
        const content = join(project, 'content');
        const own = [content, ...realShop(project)];
        server.watcher.add(own);
        server.watcher.on('all', (_event, path) => {
          const place = own.find((folder) => path.startsWith(folder + sep));
          if (place === undefined) return;
          findings.changed();
          const file = relative(place, path).split(sep).join('/');
          search.changed(pageOf(place === content ? file.replace(/^[^/]+\//, '') : file));
        });
        server.httpServer?.once('listening', () => void findings.newest());
        server.httpServer?.on('close', () => void search.close());
        server.middlewares.use((request, response, next) => {
          const path = (request.url ?? '/').split('?')[0] ?? '/';
          if (path === '/@almanac/findings') return findings.follow(response);
          const file = /^\/pagefind\/([\w./-]+\.js)$/.exec(path)?.[1];
          if (file !== undefined && !file.includes('..')) {
            search.file(file).then((bytes) => {
              if (!bytes) return next();
              response.writeHead(200, {
                'content-type': 'text/javascript; charset=utf-8',
                'cache-control': 'no-store',
              });
              response.end(bytes);
            }, next);
            return;
          }
          // Links of the search name files, as the built site has them.
          const page = /^(\/[\w/-]+)\.html$/.exec(path)?.[1];
          if (page !== undefined) return void response.writeHead(302, { location: `${page}/` }).end();
          standIn(request, response, () => findings.newest(), `/@fs/${browserSources.writing.replace(/^\//, '')}`);
          next();
        });
      },
    },
  };
}

/** A shop in a folder of its own is reached through a link; the files that are saved stand elsewhere. */
function realShop(project: string): string[] {
  try {
    const real = realpathSync(join(project, shopFolder));
    return real.startsWith(project) ? [] : [real];
  } catch {
    return [];
  }
}
