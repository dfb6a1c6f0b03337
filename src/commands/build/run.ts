/** What `npm run build` does; see ../build.ts. */
import { resolve } from 'node:path';
import process from 'node:process';
import { parseArgs } from 'node:util';
import { buildWhole } from './build-whole.ts';
import { BuildOutput } from './build-output.ts';

const { values } = parseArgs({
  options: { outDir: { type: 'string', default: 'dist' }, verbose: { type: 'boolean', default: false } },
});
const start = performance.now();
const seconds = () => (performance.now() - start) / 1000;
const output = new BuildOutput(seconds, (line) => console.log(line));
const hear = (line: string) => {
  if (values.verbose) console.log(line);
  output.hear(line);
};
try {
  await buildWhole(resolve(values.outDir), hear);
  const kept = output.kept > 0 ? ` ${output.kept} of them stand as they were.` : '';
  console.log(`${output.pages} pages built in ${seconds().toFixed(1)} s.${kept}`);
} catch (reason) {
  // What a step stops a build with is said in full; anything else is a fault of the program, and its place is wanted.
  const { message, hint, stack } = reason as Error & { readonly hint?: string };
  console.error(hint === undefined ? (stack ?? message) : `${message}\n${hint}`);
  process.exitCode = 1;
}
