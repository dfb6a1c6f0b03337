/**
 * A host shows 404.html at any depth, so its links are absolute. The worker needs the same page
 * at a known place with relative links, in whatever subfolder the site stands.
 */
export const offlinePage = { file: 'offline.html', like: '404.html' };
