/** How a build tells of a page: as Astro does, and whether it was taken from the build before. */
export const asItWas = ' (as it was)';

export const toldPage = (file: string, kept: boolean): string => `  ├─ ${file}${kept ? asItWas : ''}`;
