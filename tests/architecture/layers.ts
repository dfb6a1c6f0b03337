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
  { name: 'page scripts', owns: /^src\/lib\/page\//, layers: ['page scripts'], packages: /^almanac:pagefind$/ },
  { name: 'islands', owns: /^src\/islands\//, layers: ['core', 'islands', 'page scripts', 'styles'], packages: /^(?:preact(?:\/|$)|d3-(?:scale|shape)$)/ },
  { name: 'schemas', owns: /^src\/schemas\//, layers: ['schemas', 'core'], packages: /^astro\/zod$/ },
  { name: 'lib', owns: /^src\/lib\//, layers: ['lib', 'schemas', 'core'], packages: /^(?!node:)/ },
  { name: 'components', owns: /^src\/components\//, layers: ['components', 'islands', 'core', 'schemas', 'lib', 'page scripts', 'styles'], packages: /^(?!node:)/ },
  { name: 'layouts', owns: /^src\/layouts\//, layers: ['layouts', 'components', 'lib', 'page scripts', 'styles'], packages: /^(?:astro(?::|\/|$)|@fontsource)/ },
  { name: 'pages', owns: /^src\/pages\//, layers: ['layouts', 'components', 'lib', 'page scripts', 'styles'], packages: /^astro(?::|\/|$)/ },
  { name: 'styles', owns: /^src\/styles\//, layers: ['styles'], packages: none },
  { name: 'build', owns: /^src\/build\//, layers: ['build', 'core', 'schemas'], packages: any },
  { name: 'cli', owns: /^src\/cli\//, layers: ['cli', 'core', 'schemas'], packages: /^node:/ },
  { name: 'content collections', owns: /^src\/content\.config\.ts$/, layers: ['schemas'], packages: /^astro(?::|\/)/ },
];

/** The only file that may reach mathjs, and is itself loaded only when someone types a sum. */
export const sumEvaluator = 'src/core/quantity/sum.ts';
export const sumPackage = /^mathjs(?:\/|$)/;

/** Text outside src/ that a layer reads: the shop's own facts. */
export const readsContent = { layer: 'lib', file: /^content\/shop\.yaml$/ };

export function layerOf(file: string): Layer | undefined {
  return layers.find((layer) => layer.owns.test(file));
}

/** The folder right under src/core that a file stands in; none for the contract at its top. */
export function topicOf(file: string): string | undefined {
  return /^src\/core\/([^/]+)\//.exec(file)?.[1];
}
