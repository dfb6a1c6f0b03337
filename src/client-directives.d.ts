/** When an island of ours wakes; set up in src/steps/integration.ts. */
import 'astro';

declare module 'astro' {
  interface AstroClientDirectives {
    'client:reached'?: boolean;
  }
}
