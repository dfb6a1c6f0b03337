/**
 * npm run new -- <job|guide|explainer|table|machine> "Title": writes the beginnings of a page into the shop's folder.
 * --for <kinds of machine>, --reader <mechanic|customer>, --<code of a language> "Title in it" for a guide's twin. At a terminal it asks
 * for what is left out, unless the title is there already; elsewhere that takes the usual word, so that scripts may call
 * it. Never writes over a file.
 * Exit: 0 made, 2 refused.
 */
import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { createInterface } from 'node:readline/promises';
import { pathToSay, places, shopFolder } from '../schemas/places.ts';
import { first, nameIn, others } from '../words/lang.ts';
import { runningServer } from '../steps/support/running-server.ts';
import { pageOf } from '../steps/writing/page-of.ts';
import { localDay } from '../steps/support/local-day.ts';
import { fileNameOf, readWanted, takeApart, type Wanted } from './new/arguments.ts';
import { askedFor } from './new/questions.ts';
import { folderOf, skeleton } from './new/skeleton.ts';
import { projectFolder } from './support/command.ts';
import { inWords } from './support/in-words.ts';
import { demoShopShown, takeShop } from './support/shop.ts';

/** A sentence when a name is taken, or the files to write, each with its text. */
function filesFor({ twins, ...wanted }: Wanted): Map<string, string> | string {
  const folder = folderOf[wanted.kind];
  const name = fileNameOf(wanted.title);
  const ending = wanted.kind === 'machine' ? 'yaml' : 'mdx';
  if (name === '' || name === 'index') return `"${wanted.title}" gives no file name: use a few letters or digits.`;
  const today = localDay();
  const texts = new Map([[`${folder}/${name}.${ending}`, skeleton({ ...wanted, today, lang: first })]]);
  for (const lang of others) {
    const title = twins[lang];
    if (title !== undefined)
      texts.set(`${folder}/${nameIn(lang, name)}.${ending}`, skeleton({ ...wanted, title, today, lang }));
  }
  for (const file of texts.keys())
    for (const place of places)
      if (existsSync(join(projectFolder, place, file)))
        return place === shopFolder
          ? `${pathToSay(`${place}/${file}`)} is there already; nothing was changed.`
          : `${place}/${file} has this name; yours would stand in its place. Take another title, or copy it into your shop with npm run replace -- ${file}`;
  return texts;
}

async function wantedAt(args: readonly string[]): Promise<Wanted | string> {
  const typed = takeApart(args);
  if (typeof typed === 'string' || typed.words.length > 1 || !process.stdin.isTTY) return readWanted(args);
  const terminal = createInterface({ input: process.stdin, output: process.stdout });
  try {
    return await askedFor(
      typed,
      (question, usual) => terminal.question(usual === '' ? `${question}: ` : `${question} [${usual}]: `),
      (sentence) => console.log(`  ${sentence}`),
    );
  } finally {
    terminal.close();
  }
}

/** Where the page will be seen, and whose it is when nobody said. */
function whatNow(files: readonly string[]): string {
  const address = runningServer(projectFolder)?.address ?? 'http://localhost:4321/';
  const pages = files.map(pageOf).filter((page) => page !== undefined);
  return [
    ...(pages.length > 0 ? ['Write in it while "npm run dev" shows it:'] : ['"npm run dev" shows it on the pages.']),
    ...pages.map((page) => `  ${address}${page.slice(1)}`),
    '"npm run content" checks what you wrote.',
    ...(process.env['SHOP'] ? [] : [demoShopShown]),
  ].join('\n');
}

async function make(): Promise<void> {
  takeShop();
  const wanted = await wantedAt(process.argv.slice(2));
  const texts = typeof wanted === 'string' ? wanted : filesFor(wanted);
  if (typeof texts === 'string') {
    console.error(texts);
    process.exitCode = 2;
    return;
  }
  for (const [file, text] of texts) {
    const path = join(projectFolder, shopFolder, file);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, text, { flag: 'wx' });
    console.log(`Made ${pathToSay(`${shopFolder}/${file}`)}`);
  }
  console.log(whatNow([...texts.keys()]));
}

await inWords('Not made', make);
