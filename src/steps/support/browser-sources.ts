/**
 * Files of other layers that the steps hand to a bundler or read as text, all in one list: an import in disguise
 * passes no wall unseen. The architecture test follows these paths as it follows imports.
 */
import { fileURLToPath } from 'node:url';

const at = (address: URL): string => fileURLToPath(address);

export const browserSources = {
  /** The worker that keeps the site for reading without a signal. */
  worker: at(new URL('../../browser/worker/service-worker.ts', import.meta.url)),
  /** When a calculator wakes: client:reached. */
  reached: at(new URL('../../browser/reach/directive.ts', import.meta.url)),
  /** The search engine's page side, and what stands in for fetch inside it. */
  searchEngine: at(new URL('../../browser/search/engine.ts', import.meta.url)),
  searchFiles: at(new URL('../../browser/search/index-files.ts', import.meta.url)),
  /** Of each language, what the search must know of its words: <language>/speech.ts. */
  words: at(new URL('../../words/', import.meta.url)),
  /** What the server for writing puts on every page. */
  writing: at(new URL('../../browser/writing/panel.ts', import.meta.url)),
};

/** Read by the check of a shop's color. */
export const lookSources = {
  tokens: at(new URL('../../styles/tokens.css', import.meta.url)),
};

/** Read by the content check, to learn what an article may name. From the project's folder. */
export const namedInArticles = {
  components: 'src/components/mdx-components.ts',
  tables: 'src/components/tables',
  figures: 'src/components/figures',
  topics: 'src/core/topics',
  pages: 'src/pages',
};
