/// <reference types="astro/client" />

/** The shop.yaml of the shop that is built. */
declare module 'almanac:shop?raw' {
  const text: string;
  export default text;
}

declare namespace App {
  interface Locals {
    /** Ids of the page's sources in the order of its front matter, so that marks in the text can be numbered. */
    sources?: readonly string[];
    /** Cautions that already stand at the top of the page. */
    cautionsAtTop?: readonly string[];
  }
}
