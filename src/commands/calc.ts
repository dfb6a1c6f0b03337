/** The core at a terminal: `npm run -s calc -- --help` says how. */
import { createInterface } from 'node:readline';
import process, { stdin, stdout, stderr, argv } from 'node:process';
import { topics } from '../core/registry.ts';
import { textOf } from '../core/contract/text-of.ts';
import { answerLine, type Callable } from './calc/answer-line.ts';
import { find } from './calc/find.ts';
import { listFields, listTopics } from './calc/listings.ts';
import { readArguments, usage, type Options } from './calc/options.ts';

/** Why nothing more can be written; undefined while it can. */
let unwritable: NodeJS.ErrnoException | undefined;
stdout.on('error', (error: NodeJS.ErrnoException) => {
  unwritable ??= error;
  // Whoever read along (`| head -1`) has seen enough: no more is read, and that is no fault.
  if (error.code !== 'EPIPE') stderr.write(`The answers could not be written: ${error.message}\n`);
  process.exitCode = error.code === 'EPIPE' ? 0 : 3;
  stdin.destroy();
});

/** Waits when the reader is slower than the answers. */
async function write(text: string): Promise<void> {
  if (unwritable || stdout.write(text)) return;
  await new Promise<void>((done) => {
    stdout.once('drain', done);
    stdout.once('error', () => done());
  });
}

async function answerAll(callable: Callable, options: Options): Promise<number> {
  let worst = 0;
  let lineNumber = 0;
  for await (const line of createInterface({ input: stdin, crlfDelay: Infinity })) {
    if (unwritable) break;
    lineNumber += 1;
    if (line.trim() === '') continue;
    const answer = answerLine(line, callable, options);
    if (answer.broken !== undefined) {
      stderr.write(`Line ${lineNumber} is not a JSON object: ${answer.broken}\n`);
      return 2;
    }
    await write(`${JSON.stringify(answer.out)}\n`);
    if (!answer.out.ok) worst = 1;
  }
  return worst;
}

async function main(args: readonly string[]): Promise<number> {
  const asked = readArguments(args);
  switch (asked.what) {
    case 'help':
      await write(`${usage}\n`);
      return 0;
    case 'list':
      await write(`${listTopics(topics)}\n`);
      return 0;
    case 'mistake':
      stderr.write(`${asked.says}\n\n${usage}\n`);
      return 2;
    case 'fields':
    case 'answers': {
      const callable = find(asked.name);
      if (!callable) {
        stderr.write(
          `There is no topic or block called "${textOf(asked.name)}". These exist:\n${listTopics(topics)}\n`,
        );
        return 2;
      }
      if (asked.what === 'answers') return answerAll(callable, asked);
      await write(`${JSON.stringify(listFields(callable.fields), null, 2)}\n`);
      return 0;
    }
  }
}

// Not exit(): that would cut off what a pipe has not taken yet.
const code = await main(argv.slice(2));
if (!unwritable) process.exitCode = code;
