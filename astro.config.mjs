import { satteri } from '@astrojs/markdown-satteri';
import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { defineConfig } from 'astro/config';
import { checkedContent } from './src/build/content-check/integration.ts';
import { portable } from './src/build/portable/integration.ts';
import { siteAddress } from './src/build/site-address.ts';

export default defineConfig({
  // The content check comes first: it stops the build with file and line before anything is made.
  integrations: [checkedContent(), mdx(), preact(), portable({ site: siteAddress() })],
  // 'jsx', the default, glues words together across line breaks.
  compressHTML: true,
  // Curled quotes would spoil 1/2" and 0-60'.
  markdown: { processor: satteri({ features: { smartPunctuation: false } }) },
});
