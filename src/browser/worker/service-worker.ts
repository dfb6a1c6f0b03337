/**
 * Makes the site work without a signal: saves all of it on the first visit and answers from
 * the saved copy. A newer edition is saved beside the old one and takes over only when a
 * reader asks for it, so nothing changes under anybody's hands.
 */
import { encodePath, findFile, readPath, sameDepth } from '../address/index.ts';
import { saveAll, type FileList } from './save.ts';
import type { FromWorker, ToWorker, WorkerScope } from './scope.ts';

declare const FILES: FileList;
declare const EDITION: string;

const worker = self as unknown as WorkerScope;
const scope = worker.registration.scope;
const prefix = `almanac ${new URL(scope).pathname} `;
const name = prefix + EDITION;
const notSaved = 'offline.html';

const otherNames = async () => (await caches.keys()).filter((n) => n.startsWith(prefix) && n !== name);

async function tell(message: FromWorker): Promise<void> {
  for (const client of await worker.clients.matchAll({ includeUncontrolled: true })) client.postMessage(message);
}

async function install(): Promise<void> {
  const older = await Promise.all((await otherNames()).map((n) => caches.open(n)));
  const total = Object.keys(FILES).length;
  await saveAll(FILES, scope, await caches.open(name), older, (done) => {
    if (done % 10 === 0 || done === total) void tell({ type: 'saving', done, total });
  });
}

async function activate(): Promise<void> {
  for (const old of await otherNames()) await caches.delete(old);
  await worker.clients.claim();
}

async function answer(request: Request): Promise<Response> {
  const url = new URL(request.url);
  const path = readPath(url.pathname.slice(new URL(scope).pathname.length));
  const file = path === undefined ? undefined : findFile(path, (f) => Object.hasOwn(FILES, f));
  if (path === undefined || file === undefined) return fromNetwork(request);
  if (request.mode === 'navigate' && !sameDepth(path, file))
    return Response.redirect(scope + encodePath(file) + url.search);
  const saved = await (await caches.open(name)).match(scope + encodePath(file));
  return saved ?? fetch(request);
}

async function fromNetwork(request: Request): Promise<Response> {
  try {
    return await fetch(request);
  } catch (reason) {
    if (request.mode === 'navigate' && Object.hasOwn(FILES, notSaved)) return Response.redirect(scope + notSaved);
    throw reason;
  }
}

worker.addEventListener('install', (event) => event.waitUntil(install()));
worker.addEventListener('activate', (event) => event.waitUntil(activate()));
worker.addEventListener('fetch', (event) => {
  if (event.request.method === 'GET' && event.request.url.startsWith(scope)) event.respondWith(answer(event.request));
});
worker.addEventListener('message', ({ data }) => {
  if ((data as ToWorker).type === 'take-over') void worker.skipWaiting();
});
