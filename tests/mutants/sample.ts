/**
 * Lines of the core drawn by lot, for Stryker: a score over all of it in minutes, where all of it would take a day.
 * Left out are words, labels and tables of facts: an edit there is a matter of reading, and cases hold the figures.
 */
import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { randomFrom } from '../../src/core/chance/index.ts';

const facts =
  /\/(words|fields|formulas|blocks|index|registry|messages|tables|units|hazards|[a-z-]*-limits)\.ts$|\/tables\//;
/** A line that does something: no comment, no import, no bracket alone, no type. */
const does = (line: string) =>
  /[a-z0-9]/i.test(line) &&
  !/^\s*(\/\/|\/\*|\*|import |export (type|interface|\*|\{)|interface |type |readonly )/.test(line);

/**
 * @param root folder of the project @param count lines drawn @param seed the same seed draws the same lines
 * @returns places as Stryker's `mutate` takes them, "file:line-line"
 */
export function drawLines(root: string, count: number, seed: number): string[] {
  const files = globSync('src/core/**/*.ts', { cwd: root }).map((f) => f.replaceAll('\\', '/'));
  const places = files
    .filter((file) => !facts.test(`/${file}`))
    .toSorted()
    .flatMap((file) =>
      readFileSync(join(root, file), 'utf8')
        .split('\n')
        .flatMap((line, k) => (does(line) ? [`${file}:${k + 1}-${k + 1}`] : [])),
    );
  const random = randomFrom(seed);
  return Array.from({ length: Math.min(count, places.length) }, () => {
    const [place] = places.splice(Math.floor(random() * places.length), 1);
    return place as string;
  });
}
