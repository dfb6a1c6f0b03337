/** How article text is read. Also used by the test that keeps shop figures as they were typed. */
import { satteri } from '@astrojs/markdown-satteri';

export const articleText = {
  // Curled quotes would spoil 1/2" and 0-60'. Directives stay off: they would read 50:1 as one.
  processor: satteri({ features: { smartPunctuation: false, directive: false } }),
};
