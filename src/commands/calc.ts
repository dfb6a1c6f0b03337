/**
 * The core at a terminal.
 *   npm run -s calc -- --list                 topics and blocks
 *   npm run -s calc -- <topic>[/<block>] --fields   what it asks for
 *   npm run -s calc -- <topic>[/<block>] < lines    one JSON object a line in, one result a line out
 * Exit: 0 every line gave values, 1 some line had problems, 2 unknown topic or broken JSON.
 */
import { createInterface } from 'node:readline';
import process, { stdin, stdout, stderr, argv } from 'node:process';
import { topics } from '../core/registry.ts';
import { answerLine, type Callable } from './calc/answer-line.ts';
import { listFields, listTopics } from './calc/listings.ts';

function find(name: string): Callable | undefined {
  const [topicName = '', blockName] = name.split('/');
  const topic = Object.hasOwn(topics, topicName) ? topics[topicName] : undefined;
  if (!topic || blockName === undefined) return topic;
  const block = Object.hasOwn(topic.blocks, blockName) ? topic.blocks[blockName] : undefined;
  return block && { ...block, words: topic.words };
}

async function answerAll(callable: Callable): Promise<number> {
  let worst = 0;
  let lineNumber = 0;
  for await (const line of createInterface({ input: stdin, crlfDelay: Infinity })) {
    lineNumber += 1;
    if (line.trim() === '') continue;
    const answer = answerLine(line, callable);
    if (answer.broken !== undefined) {
      stderr.write(`Line ${lineNumber} is not a JSON object: ${answer.broken}\n`);
      return 2;
    }
    stdout.write(`${JSON.stringify(answer.out)}\n`);
    if (!answer.out.ok) worst = 1;
  }
  return worst;
}

async function main(args: readonly string[]): Promise<number> {
  if (args.includes('--list')) {
    stdout.write(`${listTopics(topics)}\n`);
    return 0;
  }
  const name = args.find((a) => !a.startsWith('-'));
  const callable = name === undefined ? undefined : find(name);
  if (!callable) {
    stderr.write(
      `${name === undefined ? 'Name a topic.' : `There is no topic or block called "${name}".`} These exist:\n${listTopics(topics)}\n`,
    );
    return 2;
  }
  if (args.includes('--fields')) {
    stdout.write(`${JSON.stringify(listFields(callable.fields), null, 2)}\n`);
    return 0;
  }
  return answerAll(callable);
}

// Not exit(): that would cut off what a pipe has not taken yet.
process.exitCode = await main(argv.slice(2));
