/**
 * npm run shop:new -- <folder>: makes a shop of one's own in a folder anywhere, with nothing of the demo shop in it.
 * Asks at a terminal; flags answer beforehand: --name, --line, --address, --phone, --hours, --currency, --rate, --tax,
 * --units, --languages. Refuses a folder that holds a shop already, or where none can stand. Exit: 0 made, 2 refused.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { createInterface } from 'node:readline/promises';
import { questions, shopOf, type Answers, type Flag } from './shop-new/answers.ts';
import { wrongFolder } from './shop-new/folder.ts';
import { nextSteps } from './shop-new/next-steps.ts';
import { firstNote, pagesNote, shopFileText } from './shop-new/shop-file.ts';
import { projectFolder } from './support/command.ts';
import { inWords } from './support/in-words.ts';

interface Asked {
  readonly folder: string;
  readonly given: Partial<Record<Flag, string>>;
}

function readArguments(args: readonly string[]): Asked | string {
  let folder = '';
  const given: Partial<Record<Flag, string>> = {};
  for (let at = 0; at < args.length; at += 1) {
    const arg = args[at] ?? '';
    const question = questions.find((q) => arg === `--${q.flag}`);
    if (question) given[question.flag] = args[(at += 1)] ?? '';
    else if (arg.startsWith('--'))
      return `There is no option "${arg}". There are ${questions.map((q) => `--${q.flag}`).join(', ')}.`;
    else if (folder === '') folder = arg;
    else return `One folder, please: "${folder}" or "${arg}"?`;
  }
  return folder === '' ? 'Name the folder: npm run shop:new -- ../my-shop' : { folder, given };
}

async function answersTo({ given }: Asked): Promise<Answers | string> {
  const found: Partial<Record<Flag, string>> = {};
  const terminal = process.stdin.isTTY ? createInterface({ input: process.stdin, output: process.stdout }) : undefined;
  try {
    for (const { flag, ask, usual, wrong } of questions) {
      let answer = given[flag] ?? (terminal ? undefined : usual);
      let fault = answer === undefined ? '' : wrong(answer, found);
      while (fault !== undefined) {
        if (!terminal) return `--${flag} ${fault}`;
        if (fault !== '') console.log(`  ${fault}`);
        answer = (await terminal.question(usual === '' ? `${ask}: ` : `${ask} [${usual}]: `)).trim() || usual;
        fault = wrong(answer, found);
      }
      found[flag] = answer ?? '';
    }
  } finally {
    terminal?.close();
  }
  return found as Answers;
}

function refuse(sentence: string): void {
  console.error(sentence);
  process.exitCode = 2;
}

async function make(): Promise<void> {
  const asked = readArguments(process.argv.slice(2));
  if (typeof asked === 'string') return refuse(asked);
  const wrong = wrongFolder(asked.folder, projectFolder);
  if (wrong !== undefined) return refuse(wrong);
  const folder = resolve(asked.folder);
  const answers = await answersTo(asked);
  if (typeof answers === 'string') return refuse(answers);
  mkdirSync(join(folder, 'machines'), { recursive: true });
  writeFileSync(join(folder, 'shop.yaml'), shopFileText(shopOf(answers)));
  writeFileSync(join(folder, 'machines', '.about.md'), firstNote);
  mkdirSync(join(folder, 'pages'), { recursive: true });
  writeFileSync(join(folder, 'pages', '.about.md'), pagesNote);
  console.log(nextSteps(relative(process.cwd(), folder) || '.', process.platform));
}

await inWords('No shop was made', make);
