/** Runs a site's program: which pages there are, and the HTML of each as Astro makes it. */
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { serverFolder, type Program } from '../program/program.ts';
import { handToProgram, type SiteData } from '../program/site-data.ts';

/** One file that is made: "jobs/drive-belt-change.html", "manifest.webmanifest". It can be kept from build to build. */
export interface PagePath {
  readonly file: string;
  /** What Astro calls it, where that is another: the page behind "offline.html" is "404.html". */
  readonly like: string;
  /** The kind of page that makes it, as Astro's program names it. */
  readonly route: string;
}

interface Route {
  readonly route: string;
  readonly component: string;
  readonly type: string;
  readonly isIndex: boolean;
}

/** What Astro's own build asks of its program. */
interface App {
  readonly manifest: {
    readonly routes: readonly { routeData: Route; styles: readonly object[]; scripts: readonly object[] }[];
  };
  setInternals(internals: object): void;
  setOptions(options: object): void;
  render(request: Request, options: { routeData: unknown }): Promise<Response>;
}

/** Nobody asks there; pages are given addresses below it. */
const host = 'http://localhost:4321';

interface LogEvent {
  readonly level: string;
  readonly label: string | null;
  readonly message: string;
}

const destination = {
  write({ level, label, message }: LogEvent): void {
    if (level === 'warn' || level === 'error') console.error(`[${label ?? level}] ${message}`);
  },
};

const keyOf = ({ route, component }: Route): string => `${route}&${component}`;

export class Renderer {
  readonly #program: Program;
  readonly #site: SiteData;
  #loaded: Promise<Loaded> | undefined;

  /** The program is loaded when it is first asked for something. */
  constructor(program: Program, site: SiteData) {
    this.#program = program;
    this.#site = site;
  }

  /** Where two kinds of page make the same file, the first counts, as with Astro. */
  async paths(): Promise<readonly PagePath[]> {
    const { app } = await this.#ready();
    const { StaticPaths } = await import('astro/runtime/prerender/static-paths.js');
    const all = await new StaticPaths(app as never).getAll();
    const paths = new Map<string, PagePath>();
    for (const { pathname, route } of all) {
      const file = fileOf(pathname, route);
      if (!paths.has(file)) paths.set(file, { file, like: file, route: keyOf(route) });
    }
    return [...paths.values()];
  }

  async render({ file, like, route }: PagePath): Promise<string> {
    const { app, routes } = await this.#ready();
    const response = await app.render(new Request(new URL(like, `${host}/`)), { routeData: routes.get(route) });
    if (response.status >= 300 && response.status < 400)
      throw new Error(`${file} leads on to another page, which src/steps/pages/renderer.ts cannot do.`);
    return response.text();
  }

  #ready(): Promise<Loaded> {
    return (this.#loaded ??= load(this.#program, this.#site));
  }
}

interface Loaded {
  readonly app: App;
  readonly routes: ReadonlyMap<string, Route>;
}

async function load({ folder, entry }: Program, site: SiteData): Promise<Loaded> {
  handToProgram(site);
  const { app } = (await import(pathToFileURL(join(folder, serverFolder, entry)).href)) as { app: App };
  const { routes } = app.manifest;
  if (routes.some((route) => route.scripts.length > 0))
    throw new Error('Astro puts a script of its own on pages; src/steps/pages/renderer.ts knows of none.');
  // Styles of each kind of page, already in their order.
  const pagesByKeys = new Map(
    routes.map(({ routeData, styles }) => [
      keyOf(routeData),
      { styles: styles.map((sheet, order) => ({ depth: order, order, sheet })) },
    ]),
  );
  app.setInternals({ pagesByKeys });
  app.setOptions({ settings: { scripts: [] }, logger: { options: { destination } } });
  return { app, routes: new Map(routes.map(({ routeData }) => [keyOf(routeData), routeData])) };
}

function fileOf(pathname: string, route: Pick<Route, 'type'>): string {
  const path = pathname.replace(/^\/|\/$/g, '');
  return route.type === 'endpoint' ? path : `${path || 'index'}.html`;
}
