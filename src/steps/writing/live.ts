/** What answers while one writes: loaded with the server, since it has much to load itself. */
export { checkedFiles } from '../content-check/check-content.ts';
export { draftPages } from './draft-pages.ts';
export { knownNames } from '../content-check/known-names.ts';
export { standIn } from './broken-page.ts';
export { Findings } from './findings.ts';
export { LiveSearch } from './live-search.ts';
export { pageOf } from './page-of.ts';
