/**
 * The languages of the site, one line each: this is the only place that names them. A new one is a folder beside these
 * with the parts its `index.ts` must export (the type check asks for each) and a line here.
 */
export * as en from './en/index.ts';
export * as es from './es/index.ts';
