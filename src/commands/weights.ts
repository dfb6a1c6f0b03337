/** npm run weights: what the pages of dist weigh, by kind: the middle one and the heaviest. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { listFiles } from '../steps/support/files.ts';
import { projectFolder } from './support/command.ts';
import { isFaces, kindOf, Scales, type Weight } from './weights/measure.ts';

const dist = join(projectFolder, 'dist');
if (!existsSync(dist)) {
  console.error('There is no dist yet. Run npm run build first.');
  process.exit(1);
}

const scales = new Scales(dist);
const files = await listFiles(dist);
const kinds = new Map<string, Weight[]>();
for (const file of files.filter((f) => f.endsWith('.html') && f !== '404.html'))
  kinds.set(kindOf(file), [...(kinds.get(kindOf(file)) ?? []), scales.page(file)]);

const total = (w: Weight) => w.html + w.css + w.js;
const kB = (bytes: number) => `${(bytes / 1000).toFixed(1)} kB`.padStart(9);
const row = (label: string, w: Weight) =>
  `  ${label.padEnd(9)}${kB(w.html)}${kB(w.css)}${kB(w.js)}${kB(total(w))}${kB(w.woken)}  ${w.file}`;

console.log(
  `After gzip     HTML      CSS       JS      all JS awake  (JS: before anybody touches the page; awake: with all its calculators reached)`,
);
for (const [kind, weights] of [...kinds].sort()) {
  const ordered = weights.sort((a, b) => total(a) - total(b));
  console.log(`${kind} (${ordered.length})`);
  console.log(row('middle', ordered[Math.floor(ordered.length / 2)] as Weight));
  console.log(row('heaviest', ordered.at(-1) as Weight));
}
const all = files.reduce((sum, file) => sum + scales.gzip(file), 0);
const faces = files.filter(isFaces).reduce((total, file) => total + scales.gzip(file), 0);
const sum = files.find((f) => f.startsWith('_astro/sum.'));
console.log(`\nThe faces, once for the site, before the first page is painted: ${kB(faces)}`);
console.log(`Loaded when someone types a sum: ${kB(sum ? scales.gzip(sum) : 0)}`);
console.log(`Search engine, loaded on the search page: ${kB(scales.gzip('pagefind/engine.js'))}`);
console.log(`First save for use without a signal: ${files.length} files, ${kB(all)}`);
