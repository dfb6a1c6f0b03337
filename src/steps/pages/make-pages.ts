/** From a program and the content: the whole site, in a fresh folder that takes the place of the one before. */
import { mkdir, rm, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { cardCache, CardList, cardOf, drawCards } from '../cards/add-cards.ts';
import { editionName } from '../edition/edition.ts';
import { editionFile } from '../edition/integration.ts';
import { clientFolder, type Program } from '../program/program.ts';
import { stopAtBrokenLinks } from '../portable/broken-links.ts';
import { offlinePage } from '../portable/offline-page.ts';
import { addPublishing } from '../publishing/add-publishing.ts';
import { byPart, partsThatHold } from '../search/index-pages.ts';
import { basePath, leftOutFiles, siteAddress } from '../site-address.ts';
import { shopColor } from '../support/shop-says.ts';
import { FreshFolder } from '../support/fresh-folder.ts';
import { letGo } from '../support/let-go.ts';
import { listFiles } from '../support/files.ts';
import { unfinished } from '../support/whole-file.ts';
import { languages } from '../../words/lang.ts';
import { editionSaid } from '../../words/date.ts';
import { addWorker } from '../worker/add-worker.ts';
import type { Finisher } from './finisher.ts';
import { BuildBefore, keepPages, listOfPages, type KeptPage, type KeptPages } from './kept-pages.ts';
import { PagePictures } from './pictures.ts';
import { newPageFile } from './page-files.ts';
import { ReadLog } from './read-log.ts';
import { Renderer, type PagePath } from './renderer.ts';
import { editionIn, notedSite, saidBy } from './said.ts';
import { toldPage } from './told.ts';
import type { SiteData } from '../program/site-data.ts';

/** Pages from one giving back of memory to the next. */
const letGoAfter = 1000;

export interface Wanted {
  readonly project: string;
  /** What `beginSite` gives. */
  readonly begun: FreshFolder;
  readonly program: Program;
  readonly site: SiteData;
  readonly finisher: Finisher;
  /** Ends when no more cards are drawn before their pages. */
  readonly cardsAhead: Promise<void> | undefined;
  /** Told of each page and each step. */
  readonly say: (line: string) => void;
}

/** The folder of the site with what the bundler made for readers in it: nothing there hangs on the content. */
export async function beginSite(program: Program, dist: string, finisher: Finisher): Promise<FreshFolder> {
  const fresh = await FreshFolder.beside(dist);
  await finisher.copy(join(program.folder, clientFolder), fresh.path);
  return fresh;
}

export async function makePages({ project, begun, program, site, finisher, cardsAhead, say }: Wanted): Promise<void> {
  const folder = begun.path;
  const address = siteAddress();
  const base = basePath(address);
  await writeFile(join(folder, editionFile), `${editionName(site.edition)}\n`);

  const said = saidBy(site);
  const before = await BuildBefore.load(program.folder, said);
  const reads = new ReadLog();
  const renderer = new Renderer(program, notedSite(site, reads));
  const there = await listFiles(folder);
  const listed = before?.paths ?? (await reads.making(listOfPages, () => renderer.paths()));
  const paths = pagesToMake(listed, new Set(there));
  const files = [...new Set([...there, ...paths.map((path) => path.file)])].sort();
  const kept = before?.pages(files);
  const turns = turnsOf(paths, kept?.pages, before?.index.pages);
  const keepIn = newPageFile();
  const signs = languages.map((lang) => [editionIn(lang), editionSaid(site.edition, lang)] as const);
  finisher.begin({
    dist: folder,
    project,
    files,
    base,
    leftOut: [...leftOutFiles(project)],
    pages: turns.pages,
    signs,
    keepIn: { folder: program.folder, file: keepIn },
    kept: before && {
      pages: turns.standing.map(([file, { place, links, names, box }]) => [file, { place, links, names, box }]),
      together: kept?.spread ?? false,
      named: before.named,
      parts: before.index.parts,
      holding: turns.holding,
    },
  });
  try {
    const pictures = await PagePictures.listen((file) => finisher.added(file));
    const known: Record<string, Known> = {};
    for (const [file, { rests, card }] of turns.standing) {
      known[file] = { rests, card };
      tell(file, true, say);
    }
    let sinceLetGo = 0;
    for (const path of turns.toMake) {
      const { file } = path;
      if (!isPage(path)) {
        await mkdir(dirname(join(folder, file)), { recursive: true });
        await writeFile(join(folder, file), await renderer.render(path));
        continue;
      }
      if (++sinceLetGo % letGoAfter === 0) letGo();
      known[file] = await makePage(path, renderer, reads, finisher);
      tell(file, false, say);
    }
    say('[almanac-pages] links, scripts, styles and search');
    letGo();
    const finishing = finisher.end();
    const shown = await pictures.make(folder, kept?.pictures ?? {});
    if (address !== undefined) {
      const cards = new CardList();
      for (const { card } of Object.values(known)) cards.note(card);
      await cardsAhead;
      await drawCards(cards, folder, cardCache(project), address, shopColor(project));
    }
    const finished = await finishing.catch(stopAtBrokenLinks);
    say('[almanac-pages] list for reading offline');
    await addWorker(folder, finished.marks);
    await addPublishing(folder, base, address);
    const pages = Object.fromEntries(
      Object.entries(known).flatMap(([file, about]) => {
        const page = finished.pages[file];
        return page ? [[file, { ...page, ...about }]] : [];
      }),
    );
    const made = { ...before?.made, ...reads.made };
    const notes = { files, said, made, paths: listed, pages, pictures: shown, parts: finished.parts };
    await keepPages(program.folder, notes, keepIn, folder);
    await begun.takePlace();
  } finally {
    await rm(unfinished(join(program.folder, keepIn)), { force: true });
  }
}

/** What of a page is known before it is finished. */
type Known = Pick<KeptPage, 'rests' | 'card'>;

async function makePage(path: PagePath, renderer: Renderer, reads: ReadLog, finisher: Finisher): Promise<Known> {
  const { html, rests } = await reads.page(() => renderer.render(path));
  await finisher.page(path.file, html);
  return { rests, card: cardOf(html) };
}

/** The page a host shows for what is not there is one, and told once. */
function tell(file: string, kept: boolean, say: (line: string) => void): void {
  if (file !== offlinePage.file) say(toldPage(file, kept));
}

interface Turns {
  /** Every page, in the order in which they are best made. */
  readonly pages: readonly string[];
  readonly standing: readonly (readonly [file: string, page: KeptPage])[];
  readonly toMake: readonly PagePath[];
  /** Parts of the search index that hold. */
  readonly holding: ReadonlySet<number>;
}

function turnsOf(paths: readonly PagePath[], kept: KeptPages['pages'] = new Map(), before = 0): Turns {
  const names = paths.filter(isPage).map(({ file }) => file);
  const holding = partsThatHold(names, (page) => kept.has(page), before);
  const inTurn = byPart(names, holding);
  const pages = names.toSorted(inTurn);
  return {
    pages,
    standing: pages.flatMap((file) => {
      const page = kept.get(file);
      return page ? [[file, page] as const] : [];
    }),
    toMake: paths.filter(({ file }) => !kept.has(file)).toSorted((a, b) => inTurn(a.file, b.file)),
    holding,
  };
}

const isPage = ({ file }: PagePath): boolean => file.endsWith('.html');

/** What stands in public/ under the same name stays as it is. */
function pagesToMake(paths: readonly PagePath[], there: ReadonlySet<string>): readonly PagePath[] {
  const lost = paths.find((path) => path.file === offlinePage.like);
  return [...paths, ...(lost ? [{ ...lost, file: offlinePage.file }] : [])]
    .filter(({ file }) => !there.has(file))
    .sort((a, b) => (a.file < b.file ? -1 : 1));
}
