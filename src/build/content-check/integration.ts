import type { AstroIntegration } from 'astro';
export function checkedContent(): AstroIntegration {
  return { name: 'almanac-content-check', hooks: {} };
}
