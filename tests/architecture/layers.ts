/** The layers of src/ and what each may import. Everything not named here is refused. */

export interface Layer {
  readonly name: string;
  readonly owns: RegExp;
  /** Layers it may import. */
  readonly layers: readonly string[];
  /** Packages it may import. */
  readonly packages: RegExp;
}

const none = /^$/;
const any = /./;

/** The first layer that owns a file counts. */
export const layers: readonly Layer[] = [
  { name: 'core', owns: /^src\/core\//, layers: ['core'], packages: none },
  { name: 'browser', owns: /^src\/browser\//, layers: ['browser', 'words'], packages: /^almanac:pagefind$/ },
  { name: 'words', owns: /^src\/words\//, layers: ['words'], packages: none },
  {
    name: 'islands',
    owns: /^src\/islands\//,
    layers: ['core', 'islands', 'browser', 'words', 'styles'],
    packages: /^(?:preact(?:\/|$)|uqr$)/,
  },
  { name: 'schemas', owns: /^src\/schemas\//, layers: ['schemas', 'core', 'words'], packages: /^(?:astro\/zod|yaml)$/ },
  { name: 'lib', owns: /^src\/lib\//, layers: ['lib', 'schemas', 'core', 'words', 'styles'], packages: /^(?!node:)/ },
  {
    name: 'components',
    owns: /^src\/components\//,
    layers: ['components', 'islands', 'core', 'schemas', 'lib', 'browser', 'words', 'styles'],
    packages: /^(?!node:)/,
  },
  {
    name: 'layouts',
    owns: /^src\/layouts\//,
    layers: ['layouts', 'components', 'lib', 'schemas', 'browser', 'words', 'styles'],
    packages: /^(?:astro(?::|\/|$)|@fontsource)/,
  },
  {
    name: 'pages',
    owns: /^src\/pages\//,
    layers: ['layouts', 'components', 'lib', 'schemas', 'browser', 'words', 'styles'],
    packages: /^astro(?::|\/|$)/,
  },
  { name: 'styles', owns: /^src\/styles\//, layers: ['styles'], packages: none },
  { name: 'steps', owns: /^src\/steps\//, layers: ['steps', 'core', 'schemas', 'words'], packages: any },
  // The terminal needs the core and Node, nothing else: it is how the numbers are audited from outside.
  {
    name: 'terminal',
    owns: /^src\/commands\/calc(?:\.ts$|\/)/,
    layers: ['terminal', 'core', 'words'],
    packages: /^node:/,
  },
  {
    name: 'commands',
    owns: /^src\/commands\//,
    layers: ['terminal', 'commands', 'steps', 'core', 'schemas', 'words'],
    packages: any,
  },
  {
    name: 'content collections',
    owns: /^src\/content\.config\.ts$/,
    layers: ['schemas', 'steps'],
    packages: /^astro(?::|\/)/,
  },
];

/** The only file that may reach mathjs, and is itself loaded only when someone types a sum. */
export const sumEvaluator = 'src/core/quantity/sum.ts';
export const sumPackage = /^mathjs(?:\/|$)/;

/** The one file outside the browser's layer that may name others' files by path; it says why. */
export const namesBrowserSources = 'src/steps/support/browser-sources.ts';

/**
 * One rule from address to file and its kind, open to whoever serves, links or keeps the site; and one reading of words,
 * open to whoever prepares the search or compares names.
 */
export const addressRule = /^src\/browser\/(?:address|language)\//;
export const goesByAddressRule = ['steps', 'commands'];

/** Layers that work on the project's folder from outside: they may read what lies beside src/. */
export const readsProject = ['steps', 'commands'];

/** Text outside src/ that a layer reads: the shop's own facts. */
export const readsContent = { layer: 'lib', file: /^content\/shop\/shop\.yaml$/ };

export function layerOf(file: string): Layer | undefined {
  return layers.find((layer) => layer.owns.test(file));
}

/** The room of the core that a file stands in, to be entered by its index.ts alone; none for the contract and the registry, which are open. */
export function roomOf(file: string): string | undefined {
  return /^src\/core\/(?:topics\/[^/]+|(?!contract|topics)[^/]+)(?=\/)/.exec(file)?.[0];
}

/** The floors of the core, from the ground up; a file imports from its own floor or a lower one. */
export const coreFloors = [
  'thresholds',
  'quantity',
  'calendar',
  'contract',
  'shared subjects',
  'topics',
  'registry',
] as const;

export function floorOf(file: string): number {
  const [, name = ''] = /^src\/core\/([^/]+)/.exec(file) ?? [];
  const floor = coreFloors.findIndex((f) => f === name.replace(/\.ts$/, ''));
  return floor >= 0 ? floor : coreFloors.indexOf('shared subjects');
}
