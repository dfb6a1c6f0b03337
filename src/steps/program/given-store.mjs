/** Stands in for Astro's baked list of the content; see given.ts. */
export default globalThis.almanacSite.store;
