/** Set for the run of Astro that makes only the site's program (see steps/program): the folder to put it in. */
export const programWanted = (): string | undefined => process.env['ALMANAC_PROGRAM'];
