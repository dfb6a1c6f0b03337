/** How esbuild makes a script that every page can load by tag, from a server and from disk. */
import type { BuildOptions } from 'esbuild';

export const classicOptions = {
  bundle: true,
  write: false,
  format: 'iife',
  minify: true,
  charset: 'utf8',
  legalComments: 'none',
  target: ['es2022'],
  logLevel: 'silent',
} satisfies BuildOptions;
