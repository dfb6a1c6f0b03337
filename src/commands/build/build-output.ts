/** What of a build's talk is worth a reader's time: warnings, and how far it is when it takes long. */
import { asItWas } from '../../steps/pages/told.ts';

/** A build shorter than this says nothing on the way [s]. */
export const longBuild = 8;
/** Pages from one word about them to the next. */
const step = 500;

/** Our own steps speak under this name; see steps/integration.ts. */
const own = /\[almanac-[a-z]+\] (.*)$/;
/** A kind of content a shop has none of, own pages for one, is no mistake; Astro says so twice. */
const nothingThere = /\[glob-loader\] No files found matching|The collection "\w+" does not exist or is empty/;
const aPage = /[├└]─ \S+\.html/;

/** The colors a terminal is told. */
const colors = /\u001B\[[\d;]*m/g;

export class BuildOutput {
  pages = 0;
  /** Of them, taken from the build before. */
  kept = 0;
  #warned = false;
  readonly #seconds: () => number;
  readonly #say: (line: string) => void;

  /** `seconds` since the build began. */
  constructor(seconds: () => number, say: (line: string) => void) {
    this.#seconds = seconds;
    this.#say = say;
  }

  /** One line of what Astro says; what goes to its error output is not ours to sift. */
  hear(line: string): void {
    const text = line.replaceAll(colors, '');
    if (aPage.test(text)) {
      this.pages += 1;
      if (text.endsWith(asItWas)) this.kept += 1;
      if (this.pages % step === 0) this.#saySlow(`${this.pages} pages made`);
      return;
    }
    const said = own.exec(text)?.[1];
    if (said !== undefined && !text.includes('[WARN]')) return this.#saySlow(said);
    // A warning goes on until the next line with a time of its own.
    if (/^\d\d:\d\d:\d\d /.test(text)) this.#warned = text.includes('[WARN]') && !nothingThere.test(text);
    if (this.#warned) this.#say(line);
  }

  #saySlow(line: string): void {
    if (this.#seconds() >= longBuild) this.#say(`${Math.round(this.#seconds())} s: ${line}`);
  }
}
