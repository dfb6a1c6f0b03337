/**
 * Beside the thread that makes pages: takes each as Astro makes it, gives it its last form, writes it and hands it to the
 * search. So both cores are at work, and no page is read back from the disk.
 */
import { mkdirSync, openSync, readSync, writeFileSync, writeSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { parentPort, workerData } from 'node:worker_threads';
import { PortableSite, type PageLinks } from '../portable/make-portable.ts';
import { packSearch } from '../search/add-search.ts';
import { PageIndex } from '../search/index-pages.ts';
import { hasBox } from '../search/wake-early.ts';
import { letGo } from '../support/let-go.ts';
import type { FinisherGiven, FromFinisher, ToFinisher } from './between-threads.ts';
import type { FinishedPage } from './kept-pages.ts';

if (!parentPort) throw new Error('This file is the inside of a thread; finisher.ts starts it.');
const port = parentPort;
const { dist, project, files, base, leftOut, pages, signs, keepIn, keptIn } = workerData as FinisherGiven;

const all = new Set(files);
const site = new PortableSite(dist, { files: all, base, leftOut: new Set(leftOut) });
const index = PageIndex.start(pages);
const withBox: string[] = [];
const folders = new Set<string>();
const finished: Record<string, FinishedPage> = {};
const keeping = openSync(keepIn, 'w');
const kept = keptIn && openSync(keptIn.from, 'r');
let keptSoFar = 0;

async function take(message: ToFinisher): Promise<void> {
  if ('added' in message) return void all.add(message.added);
  if ('end' in message) {
    letGo();
    // The index is made by a program of its own: meanwhile the scripts are.
    await Promise.all([site.finish(keptIn?.named), packSearch(await index, dist, project, withBox)]);
    await (await index).close();
    port.postMessage({ finished } satisfies FromFinisher);
    return port.close();
  }
  const { file } = message;
  const { bytes, links, names } = 'kept' in message ? asItWas(file, message.kept) : await finish(file, message.html);
  writeSync(keeping, bytes);
  finished[file] = { at: keptSoFar, length: bytes.length, links, names };
  keptSoFar += bytes.length;
  const html = signs.reduce((text, [sign, said]) => text.replaceAll(sign, said), bytes.toString('utf8'));
  const path = join(dist, file);
  if (!folders.has(dirname(path))) mkdirSync(dirname(path), { recursive: true });
  folders.add(dirname(path));
  writeFileSync(path, html);
  if (hasBox(html)) withBox.push(file);
  await (await index).add(file, html);
  port.postMessage('taken' satisfies FromFinisher);
}

interface Ready {
  readonly bytes: Buffer;
  readonly links: PageLinks;
  readonly names: readonly string[];
}

async function finish(file: string, made: string): Promise<Ready> {
  const { html, links, names } = await site.page(file, made);
  return { bytes: Buffer.from(html), links, names };
}

function asItWas(file: string, { at, length, links, names }: FinishedPage): Ready {
  site.kept(file, { links, names });
  const bytes = Buffer.alloc(length);
  if (kept === undefined || readSync(kept, bytes, 0, length, at) !== length)
    throw new Error(`The page ${file} is not among the kept ones any more.`);
  return { bytes, links, names };
}

let last: Promise<unknown> = index;
port.on('message', (message: ToFinisher) => {
  last = last.then(() => take(message));
  last.catch((reason: unknown) => {
    // Its name would be lost on the way.
    const name = reason instanceof Error ? reason.name : 'Error';
    port.postMessage({ failed: reason, name } satisfies FromFinisher);
    void index.then((started) => started.close()).catch(() => undefined);
    port.close();
  });
});
