/** From a program and the content: the whole site, in a fresh folder that takes the place of the one before. */
import { cp, mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { cardCache, CardList, drawCards } from '../cards/add-cards.ts';
import { editionName } from '../edition/edition.ts';
import { editionFile } from '../edition/integration.ts';
import { addLicenses } from '../licenses/add-licenses.ts';
import { addMarks } from '../one-shop.ts';
import { clientFolder, type Program } from '../program/program.ts';
import { offlinePage, stopAtBrokenLinks } from '../portable/make-portable.ts';
import { addPublishing } from '../publishing/add-publishing.ts';
import { basePath, leftOutFiles, siteAddress } from '../site-address.ts';
import { shopColor } from '../support/shop-says.ts';
import { FreshFolder } from '../support/fresh-folder.ts';
import { letGo } from '../support/let-go.ts';
import { listFiles } from '../support/files.ts';
import { addWorker } from '../worker/add-worker.ts';
import { Finisher } from './finisher.ts';
import { PagePictures } from './pictures.ts';
import { Renderer, type PagePath } from './renderer.ts';
import type { SiteData } from '../program/site-data.ts';

/** Pages from one giving back of memory to the next. */
const letGoAfter = 1000;

export interface Wanted {
  readonly project: string;
  /** The folder of the site. */
  readonly dist: string;
  readonly program: Program;
  readonly site: SiteData;
  /** Told of each page and each step. */
  readonly say: (line: string) => void;
}

export async function makePages({ project, dist, program, site, say }: Wanted): Promise<void> {
  const fresh = await FreshFolder.beside(dist);
  const folder = fresh.path;
  const address = siteAddress();
  const base = basePath(address);
  await cp(join(program.folder, clientFolder), folder, { recursive: true });
  await addMarks(folder, project);
  await addLicenses(folder, program.shipped);
  await writeFile(join(folder, editionFile), `${editionName(site.edition)}\n`);

  const renderer = await Renderer.load(program, site);
  const there = await listFiles(folder);
  const paths = pagesToMake(await renderer.paths(), new Set(there));
  const files = [...new Set([...there, ...paths.map((path) => path.file)])].sort();
  const pages = paths.filter((path) => path.file.endsWith('.html')).length;
  const finisher = new Finisher({ dist: folder, project, files, base, leftOut: [...leftOutFiles(project)], pages });
  try {
    const pictures = await PagePictures.listen((file) => finisher.added(file));
    const cards = new CardList();
    let sinceLetGo = 0;
    for (const path of paths) {
      if (++sinceLetGo % letGoAfter === 0) letGo();
      const html = await renderer.render(path);
      if (path.file.endsWith('.html')) {
        if (address !== undefined) cards.note(html);
        await finisher.page(path.file, html);
        if (path.file !== offlinePage.file) say(`  ├─ ${path.file}`);
      } else {
        await mkdir(dirname(join(folder, path.file)), { recursive: true });
        await writeFile(join(folder, path.file), html);
      }
    }
    say('[almanac-pages] links, scripts, styles and search');
    letGo();
    const finished = finisher.end();
    await pictures.make(folder);
    if (address !== undefined) await drawCards(cards, folder, cardCache(project), address, shopColor(project));
    await finished.catch(stopAtBrokenLinks);
    say('[almanac-pages] list for reading offline');
    await addWorker(folder);
    await addPublishing(folder, base, address);
    await fresh.takePlace();
  } finally {
    await finisher.stop();
  }
}

/** What stands in public/ under the same name stays as it is. */
function pagesToMake(paths: readonly PagePath[], there: ReadonlySet<string>): readonly PagePath[] {
  const lost = paths.find((path) => path.file === offlinePage.like);
  return [...paths, ...(lost ? [{ ...lost, file: offlinePage.file }] : [])]
    .filter(({ file }) => !there.has(file))
    .sort((a, b) => (a.file < b.file ? -1 : 1));
}
