/**
 * Beside the thread that makes pages: takes each as Astro makes it and finishes it. So both cores are at work, and no page
 * is read back from the disk.
 */
import { cpSync } from 'node:fs';
import { parentPort } from 'node:worker_threads';
import { keepCompiled } from '../support/keep-compiled.ts';
import type { FromFinisher, ToFinisher } from './between-threads.ts';
import type { Finishing } from './finishing.ts';

if (!parentPort) throw new Error('This file is the inside of a thread; finisher.ts starts it.');
const port = parentPort;
const tell = (said: FromFinisher) => port.postMessage(said);
keepCompiled();
const loaded = import('./finishing.ts');
loaded.catch(failed);
let finishing: Finishing | undefined;
/** Pages of the build before are written whenever no new one is there. */
let keeping: Promise<void> | undefined;

async function take(message: ToFinisher): Promise<void> {
  if ('copy' in message) {
    cpSync(message.copy, message.to, { recursive: true });
    return tell('copied');
  }
  if ('given' in message) {
    finishing = await (await loaded).Finishing.begin(message.given);
    keeping = finishing.asTheyWere();
    keeping.catch(failed);
    return;
  }
  if (!finishing) throw new Error('A page came before anything was said about its site.');
  if ('added' in message) return finishing.added(message.added);
  if ('end' in message) {
    await keeping;
    tell({ finished: await finishing.end() });
    return port.close();
  }
  await finishing.made(message.file, message.html);
  tell('taken');
}

function failed(reason: unknown): void {
  // Its name would be lost on the way.
  const name = reason instanceof Error ? reason.name : 'Error';
  tell({ failed: reason, name });
  void finishing?.close().catch(() => undefined);
  port.close();
}

let last: Promise<unknown> = Promise.resolve();
port.on('message', (message: ToFinisher) => {
  last = last.then(() => take(message));
  last.catch(failed);
});
