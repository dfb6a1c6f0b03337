/** What a device needs to put the site among its programs. Paths are relative, so it works in a subfolder. */
import type { APIRoute } from 'astro';
import { shop } from '../lib/shop.ts';
import { ground } from '../lib/theme.ts';

export const GET: APIRoute = () =>
  new Response(
    JSON.stringify({
      name: shop.name,
      short_name: shop.name.split(' ').slice(0, 2).join(' '),
      description: shop.line,
      start_url: './index.html',
      scope: './',
      display: 'standalone',
      background_color: ground.light,
      theme_color: ground.light,
      icons: [
        { src: './mark.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' },
        { src: './mark-192.png', sizes: '192x192', type: 'image/png', purpose: 'any' },
        { src: './mark-512.png', sizes: '512x512', type: 'image/png', purpose: 'any maskable' },
      ],
    }),
    { headers: { 'Content-Type': 'application/manifest+json' } },
  );
