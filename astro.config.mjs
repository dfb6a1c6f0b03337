import { defineConfig } from 'astro/config';
import { siteConfig } from './src/steps/site-config.ts';
import { chooseShop } from './src/steps/support/choose-shop.ts';

chooseShop(import.meta.dirname);

export default defineConfig(siteConfig());
