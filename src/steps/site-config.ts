/** What Astro is told of the site. Its own file astro.config.mjs hands this on; `npm run dev` reads it here. */
import type { AstroUserConfig } from 'astro';
import { articlesAsData } from './articles.ts';
import { checkedContent } from './content-check/integration.ts';
import { namedEdition } from './edition/integration.ts';
import { islands } from './islands/islands.ts';
import { portable } from './integration.ts';
import { oneShop } from './one-shop.ts';
import { program } from './program/integration.ts';
import { siteAddress } from './site-address.ts';
import { samples } from './writing/samples.ts';
import { whileWriting } from './writing/while-writing.ts';

/** The shop must be chosen before: see support/choose-shop.ts. */
export const siteConfig = (): AstroUserConfig => ({
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
  // Whoever writes needs the foot of the page for what the check finds.
  devToolbar: { enabled: false },
});
