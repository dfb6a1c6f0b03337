/** Preact's renderer; whatever is no Astro component is an island, so there is nothing to try out first. */
import preact from '@astrojs/preact/server.js';

export default { ...preact, check: (component: unknown) => Promise.resolve(typeof component === 'function') };
