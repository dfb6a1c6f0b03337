/** What answers while one writes: loaded with the server, since it has much to load itself. */
import { kindOf } from '../../schemas/kinds.ts';

export { checkContent } from '../content-check/check-content.ts';
export { knownNames } from '../content-check/known-names.ts';
export { standIn } from './broken-page.ts';
export { Findings } from './findings.ts';
export { LiveSearch } from './live-search.ts';

/** Whether a kind of content, by its folder, is articles. */
export const isArticle = (folder: string): boolean => kindOf(folder)?.ending === 'mdx';
