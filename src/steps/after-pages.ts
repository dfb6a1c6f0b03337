/** The steps after Astro has made its pages: loaded when they are at hand, since they have much to load themselves. */
export { addCards, cardCache } from './cards/add-cards.ts';
export { addLicenses } from './licenses/add-licenses.ts';
export { stopAtBrokenLinks } from './portable/broken-links.ts';
export { makePortable } from './portable/make-portable.ts';
export { addPublishing } from './publishing/add-publishing.ts';
export { addSearch } from './search/add-search.ts';
export { letGo } from './support/let-go.ts';
export { addWorker } from './worker/add-worker.ts';
