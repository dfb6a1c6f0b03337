/**
 * Makes the site work without a signal: saves all of it on the first visit and answers from
 * the saved copy. A newer edition is saved beside the old one and takes over only when a
 * reader asks for it, so nothing changes under anybody's hands.
 */
import { encodePath, findFile, readPath, sameDepth } from '../address/index.ts';
import { isAltered, saveAll, type FileList } from './save.ts';
import type { FromWorker, ToWorker, WorkerScope } from './scope.ts';

declare const FILES: FileList;
declare const EDITION: string;

const worker = self as unknown as WorkerScope;
const scope = worker.registration.scope;
const prefix = `almanac ${new URL(scope).pathname} `;
const name = prefix + EDITION;
const offlinePage = 'offline.html';
/** Where this edition's cache notes what the host altered; no page has such a name. */
const noteAddress = `${scope}.altered`;

interface AlteredNote {
  /** One of the altered files: asked for first on the next try. */
  readonly file: string;
  /** The reader knows. */
  readonly told: boolean;
}

const otherNames = async () => (await caches.keys()).filter((n) => n.startsWith(prefix) && n !== name);

async function tell(message: FromWorker): Promise<void> {
  for (const client of await worker.clients.matchAll({ includeUncontrolled: true })) client.postMessage(message);
}

async function install(): Promise<void> {
  const cache = await caches.open(name);
  await refuseAlteringHost(cache);
  const older = await Promise.all((await otherNames()).map((n) => caches.open(n)));
  const total = Object.keys(FILES).length;
  const { altered, missing, noRoom } = await saveAll(FILES, scope, cache, older, (done) => {
    if (done % 10 === 0 || done === total) void tell({ type: 'saving', done, total });
  });
  const [file] = altered;
  if (file !== undefined) await cache.put(noteAddress, Response.json({ file, told: false } satisfies AlteredNote));
  if (noRoom.length > 0) await tell({ type: 'no-room' });
  const unsaved = altered.length + missing.length + noRoom.length;
  if (unsaved > 0) throw new Error(`${unsaved} files are not saved: altered, not come, or no room for them.`);
}

/**
 * A site that is half-way through being published gives wrong files once; a host that adds a line to each page gives
 * them on every visit. After the first time one file is asked for, not all: it alone tells whether more is worth it.
 */
async function refuseAlteringHost(cache: Cache): Promise<void> {
  const note = (await (await cache.match(noteAddress))?.json()) as AlteredNote | undefined;
  if (!note) return;
  if (await isAltered(note.file, FILES[note.file] ?? '', scope)) {
    await tell({ type: 'altered', again: note.told });
    await cache.put(noteAddress, Response.json({ ...note, told: true } satisfies AlteredNote));
    throw new Error('The host alters files on their way.');
  }
  await cache.delete(noteAddress);
}

async function activate(): Promise<void> {
  for (const old of await otherNames()) await caches.delete(old);
  await worker.clients.claim();
}

/** Devices short of room drop saved files. What is gone is fetched again, as long as the server still has this edition. */
async function lookAfter(): Promise<void> {
  const cache = await caches.open(name);
  const saved = new Set((await cache.keys()).map((request) => request.url));
  const lost = Object.keys(FILES).filter((file) => !saved.has(scope + encodePath(file)));
  const listed = Object.fromEntries(lost.map((file) => [file, FILES[file] ?? '']));
  const { altered, missing, noRoom } = await saveAll(listed, scope, cache, [], () => undefined);
  const gone = new Set([...altered, ...missing, ...noRoom]);
  const pages = Object.keys(FILES).filter((file) => file.endsWith('.html') && !gone.has(file)).length;
  await tell({ type: 'kept', pages });
}

async function answer(request: Request): Promise<Response> {
  const url = new URL(request.url);
  const path = readPath(url.pathname.slice(new URL(scope).pathname.length));
  const file = path === undefined ? undefined : findFile(path, (f) => Object.hasOwn(FILES, f));
  if (path === undefined || file === undefined) return fromNetwork(request);
  if (request.mode === 'navigate' && !sameDepth(path, file))
    return Response.redirect(scope + encodePath(file) + url.search);
  const saved = await (await caches.open(name)).match(scope + encodePath(file));
  return saved ?? fromNetwork(request);
}

async function fromNetwork(request: Request): Promise<Response> {
  try {
    return await fetch(request);
  } catch (reason) {
    if (request.mode === 'navigate' && Object.hasOwn(FILES, offlinePage)) return Response.redirect(scope + offlinePage);
    throw reason;
  }
}

worker.addEventListener('install', (event) => event.waitUntil(install()));
worker.addEventListener('activate', (event) => event.waitUntil(activate()));
worker.addEventListener('fetch', (event) => {
  if (event.request.method === 'GET' && event.request.url.startsWith(scope)) event.respondWith(answer(event.request));
});
worker.addEventListener('message', (event) => {
  const { type } = event.data as ToWorker;
  if (type === 'take-over') void worker.skipWaiting();
  else event.waitUntil(lookAfter());
});
