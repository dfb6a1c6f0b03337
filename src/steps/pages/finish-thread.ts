/**
 * Beside the thread that makes pages: takes each as Astro makes it, gives it its last form, writes it and hands it to the
 * search. So both cores are at work, and no page is read back from the disk.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { parentPort, workerData } from 'node:worker_threads';
import { PortableSite } from '../portable/make-portable.ts';
import { packSearch } from '../search/add-search.ts';
import { PageIndex } from '../search/index-pages.ts';
import { hasBox } from '../search/wake-early.ts';
import { letGo } from '../support/let-go.ts';
import type { FinisherGiven, FromFinisher, ToFinisher } from './between-threads.ts';

if (!parentPort) throw new Error('This file is the inside of a thread; finisher.ts starts it.');
const port = parentPort;
const { dist, project, files, base, leftOut, pages } = workerData as FinisherGiven;

const all = new Set(files);
const site = new PortableSite(dist, { files: all, base, leftOut: new Set(leftOut) });
const index = PageIndex.start(pages);
const withBox: string[] = [];
const folders = new Set<string>();

async function take(message: ToFinisher): Promise<void> {
  if ('added' in message) return void all.add(message.added);
  if ('end' in message) {
    letGo();
    // The index is made by a program of its own: meanwhile the scripts are.
    await Promise.all([site.finish(), packSearch(await index, dist, project, withBox)]);
    await (await index).close();
    port.postMessage('finished' satisfies FromFinisher);
    return port.close();
  }
  const { file } = message;
  const html = await site.page(file, message.html);
  const path = join(dist, file);
  if (!folders.has(dirname(path))) mkdirSync(dirname(path), { recursive: true });
  folders.add(dirname(path));
  writeFileSync(path, html);
  if (hasBox(html)) withBox.push(file);
  await (await index).add(file, html);
  port.postMessage('taken' satisfies FromFinisher);
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
