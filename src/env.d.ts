/// <reference types="astro/client" />

declare namespace App {
  interface Locals {
    /** Ids of the page's sources in the order of its front matter, so that marks in the text can be numbered. */
    sources?: readonly string[];
    /** Cautions that already stand at the top of the page. */
    cautionsAtTop?: readonly string[];
  }
}
