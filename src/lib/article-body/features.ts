/** How article text is read. Curled quotes would spoil 1/2" and 0-60'; directives would read 50:1 as one. */
export const articleFeatures = { smartPunctuation: false, directive: false } as const;
