/**
 * npm run fuzz: hostile input, more than a test run can bear, with counts.
 *   npm run fuzz                       every part
 *   npm run fuzz -- terminal           one part
 *   npm run fuzz -- --seed 7 --lines 2000
 * The same seed gives the same input. Exit: 0 nothing found, 1 something found, 2 the command could not be read.
 */
import process, { argv } from 'node:process';
import { fuzzContent } from './fuzz/content.ts';
import type { Found, FuzzOptions } from './fuzz/part.ts';
import { fuzzTerminal } from './fuzz/terminal.ts';

/** A part is one file in fuzz/ and one line here. */
const parts: Readonly<Record<string, (options: FuzzOptions) => Found | Promise<Found>>> = {
  terminal: fuzzTerminal,
  content: fuzzContent,
};

function readArguments(args: readonly string[]): { wanted: readonly string[]; options: FuzzOptions } | string {
  const wanted: string[] = [];
  const options = { seed: 1, lines: 20_000, calc: 'src/commands/calc.ts' };
  for (let at = 0; at < args.length; at += 1) {
    const arg = args[at] ?? '';
    if (arg === '--seed' || arg === '--lines') {
      at += 1;
      const number = Number(args[at]);
      if (!Number.isInteger(number) || number < 1) return `${arg} wants a whole number, like 7.`;
      options[arg === '--seed' ? 'seed' : 'lines'] = number;
    } else if (Object.hasOwn(parts, arg)) wanted.push(arg);
    else
      return `There is no part or option "${arg}". There are ${[...Object.keys(parts), '--seed', '--lines'].join(', ')}.`;
  }
  return { wanted: wanted.length > 0 ? wanted : Object.keys(parts), options };
}

const asked = readArguments(argv.slice(2));
if (typeof asked === 'string') {
  console.error(asked);
  process.exitCode = 2;
} else {
  for (const name of asked.wanted) {
    console.log(`== ${name}, seed ${asked.options.seed}`);
    const found = await parts[name]?.(asked.options);
    for (const count of found?.counts ?? []) console.log(`   ${count}`);
    for (const fault of found?.faults.slice(0, 40) ?? []) console.error(`-- ${fault}`);
    console.log(`   ${found?.faults.length ?? 0} faults`);
    if (found && found.faults.length > 0) process.exitCode = 1;
  }
}
