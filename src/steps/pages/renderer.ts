/** Runs a site's program: which pages there are, and the HTML of each as Astro makes it. */
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { serverFolder, type Program } from '../program/program.ts';
import { handToProgram, type SiteData } from '../program/site-data.ts';

/** One file that is made: "jobs/drive-belt-change.html", "manifest.webmanifest". */
export interface PagePath {
  readonly file: string;
  readonly url: URL;
  readonly route: unknown;
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

export class Renderer {
  readonly #app: App;

  private constructor(app: App) {
    this.#app = app;
  }

  static async load({ folder, entry }: Program, site: SiteData): Promise<Renderer> {
    handToProgram(site);
    const { app } = (await import(pathToFileURL(join(folder, serverFolder, entry)).href)) as { app: App };
    const { routes } = app.manifest;
    if (routes.some((route) => route.scripts.length > 0))
      throw new Error('Astro puts a script of its own on pages; src/steps/pages/renderer.ts knows of none.');
    // Styles of each kind of page, already in their order.
    const pagesByKeys = new Map(
      routes.map(({ routeData, styles }) => [
        `${routeData.route}&${routeData.component}`,
        { styles: styles.map((sheet, order) => ({ depth: order, order, sheet })) },
      ]),
    );
    app.setInternals({ pagesByKeys });
    app.setOptions({ settings: { scripts: [] }, logger: { options: { destination } } });
    return new Renderer(app);
  }

  /** Where two kinds of page make the same file, the first counts, as with Astro. */
  async paths(): Promise<readonly PagePath[]> {
    const { StaticPaths } = await import('astro/runtime/prerender/static-paths.js');
    const all = await new StaticPaths(this.#app as never).getAll();
    const paths = new Map<string, PagePath>();
    for (const { pathname, route } of all) {
      const file = fileOf(pathname, route);
      if (!paths.has(file)) paths.set(file, { file, url: new URL(file, `${host}/`), route });
    }
    return [...paths.values()];
  }

  async render({ file, url, route }: PagePath): Promise<string> {
    const response = await this.#app.render(new Request(url), { routeData: route });
    if (response.status >= 300 && response.status < 400)
      throw new Error(`${file} leads on to another page, which src/steps/pages/renderer.ts cannot do.`);
    return response.text();
  }
}

function fileOf(pathname: string, route: Pick<Route, 'type'>): string {
  const path = pathname.replace(/^\/|\/$/g, '');
  return route.type === 'endpoint' ? path : `${path || 'index'}.html`;
}
