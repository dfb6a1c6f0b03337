/** A small static server for trying the site on this machine. It serves one folder and nothing above it. */
import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join, resolve, sep } from 'node:path';
import { pipeline } from 'node:stream';
import { createGzip } from 'node:zlib';
import { encodePath, filesMeant, readPath } from '../../browser/address/index.ts';
import { typeOf } from '../../browser/address/types.ts';
import { cachingOf } from '../../steps/publishing/headers.ts';

const packs = /^(?:text\/|application\/(?:json|manifest|xml)|image\/svg)/;

export interface Serving {
  /** "http://localhost:4321/" */
  readonly address: string;
  readonly close: () => Promise<void>;
}

export interface ServeOptions {
  /** Tried first; 0 asks the system for any free port. */
  readonly port?: number;
  /** Subfolder the site stands in: "/" or "/shop/". */
  readonly base?: string;
}

export async function serveFolder(folder: string, { port = 0, base = '/' }: ServeOptions = {}): Promise<Serving> {
  const top = resolve(folder);
  const server = createServer((request, response) => {
    answer(top, base, request, response).catch(() => {
      if (!response.headersSent) response.writeHead(500);
      response.end();
    });
  });
  const used = await listen(server, port);
  return {
    address: `http://localhost:${used}${base}`,
    close: () =>
      new Promise((done) => {
        server.close(() => done());
        server.closeAllConnections();
      }),
  };
}

/** Ports in use are common on a shop laptop; the next free one does as well. */
async function listen(server: Server, port: number): Promise<number> {
  for (const candidate of port === 0 ? [0] : [port, port + 1, port + 2, port + 3, 0].filter((p) => p <= 65_535)) {
    const free = await new Promise<boolean>((done, failed) => {
      const refused = (error: NodeJS.ErrnoException) => (error.code === 'EADDRINUSE' ? done(false) : failed(error));
      server.once('error', refused);
      server.listen(candidate, 'localhost', () => {
        server.off('error', refused);
        done(true);
      });
    });
    if (free) return (server.address() as AddressInfo).port;
  }
  throw new Error('No free port was found.');
}

async function answer(top: string, base: string, request: IncomingMessage, response: ServerResponse): Promise<void> {
  if (request.method !== 'GET' && request.method !== 'HEAD')
    return void response.writeHead(405, { allow: 'GET, HEAD' }).end();
  const [rawPath = '/', query] = (request.url ?? '/').split('?', 2);
  const path = readPath(rawPath);
  if (path === undefined) return send(top, undefined, request, response);
  if (!path.startsWith(base))
    return path + '/' === base ? redirect(response, base) : send(top, undefined, request, response);
  const inside = path.slice(base.length);
  const found = await find(top, inside);
  // Links on a page are relative: /jobs/x/ would count one folder too many.
  if (found && inside.endsWith('/') && !found.endsWith('index.html'))
    return redirect(response, base + encodePath(found) + (query === undefined ? '' : `?${query}`));
  return send(top, found, request, response);
}

function redirect(response: ServerResponse, to: string): void {
  response.writeHead(302, { location: to }).end();
}

/** The file an address means, as a path inside the folder. */
async function find(top: string, inside: string): Promise<string | undefined> {
  for (const candidate of filesMeant(inside)) {
    const full = resolve(top, candidate);
    if (!full.startsWith(top + sep)) return undefined;
    if ((await stat(full).catch(() => undefined))?.isFile()) return candidate;
  }
  return undefined;
}

async function send(
  top: string,
  found: string | undefined,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  const file = found ?? (await find(top, '404.html'));
  const status = found === undefined ? 404 : 200;
  if (file === undefined)
    return void response.writeHead(404, { 'content-type': 'text/plain; charset=utf-8' }).end('Not found');
  const type = typeOf(file) ?? 'application/octet-stream';
  const headers: Record<string, string> = {
    'content-type': type,
    'cache-control': cachingOf(file),
    'x-content-type-options': 'nosniff',
  };
  const gzip = packs.test(type) && /\bgzip\b/.test(request.headers['accept-encoding'] ?? '');
  if (gzip) Object.assign(headers, { 'content-encoding': 'gzip', vary: 'accept-encoding' });
  response.writeHead(status, headers);
  if (request.method === 'HEAD') return void response.end();
  const stream = createReadStream(join(top, file));
  // A reader who leaves half-way closes the connection; that is no error of ours.
  const done = () => undefined;
  if (gzip) pipeline(stream, createGzip(), response, done);
  else pipeline(stream, response, done);
}
