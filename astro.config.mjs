import { defineConfig } from 'astro/config';
import { articlesAsData } from './src/steps/articles.ts';
import { checkedContent } from './src/steps/content-check/integration.ts';
import { namedEdition } from './src/steps/edition/integration.ts';
import { islands } from './src/steps/islands/islands.ts';
import { portable } from './src/steps/integration.ts';
import { oneShop } from './src/steps/one-shop.ts';
import { program } from './src/steps/program/integration.ts';
import { siteAddress } from './src/steps/site-address.ts';
import { samples } from './src/steps/writing/samples.ts';
import { whileWriting } from './src/steps/writing/while-writing.ts';
import { chooseShop } from './src/steps/support/choose-shop.ts';

chooseShop(import.meta.dirname);

export default defineConfig({
  // The content check comes first: it stops the build with file and line before anything is made.
  integrations: [
    checkedContent(),
    articlesAsData(),
    islands(),
    oneShop(),
    program(),
    namedEdition(),
    whileWriting(),
    samples(),
    portable({ site: siteAddress() }),
  ],
  // White space counts as in JSX: the formatter lays .astro files out by the same rule.
  compressHTML: 'jsx',
});
