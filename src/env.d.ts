/// <reference types="astro/client" />

/** The shop.yaml of the shop that is built. */
declare module 'almanac:shop?raw' {
  const text: string;
  export default text;
}

/** What is built: the day of its newest review, and a mark that follows every change. */
declare module 'almanac:edition' {
  export const edition: {
    readonly day: string;
    readonly mark: string;
    /** What stands for it in a page that is kept for the next build. */
    readonly standIn?: (lang: string) => string;
  };
}

/** In a build that keeps pages for the next one: what each page reads of the content. Elsewhere nothing listens. */
declare module 'almanac:reads' {
  export interface Reads {
    /** The page reads this: "jobs" is which there are, "jobs/recoil-cord title" a field, "... body" a text. */
    note(what: string): void;
    /** Something is made for the whole site out of what is read meanwhile. */
    making<T>(name: string, make: () => Promise<T>): Promise<T>;
    /** The page uses what was made, and so has read what it was made of. */
    uses(name: string): void;
  }
  export const reads: Reads | undefined;
}

/** The pictures that stand beside articles, by their path from the project's folder. */
declare module 'almanac:pictures' {
  export const pictures: Readonly<Record<string, import('astro').ImageMetadata>>;
}

/** Of each kind of content the shortest file, as it is written; a kind without a file is not there. */
declare module 'almanac:samples' {
  const samples: Readonly<Record<string, { readonly id: string; readonly file: string; readonly text: string }>>;
  export default samples;
}

declare namespace App {
  interface Locals {
    /** Ids of the page's sources in the order of the text, so that marks in it can be numbered. */
    sources?: readonly string[];
    /** Cautions that already stand at the top of the page. */
    cautionsAtTop?: readonly string[];
  }
}
