/** A page that cannot be made is answered with what the content check says about it, in place of the program's own words. */
import type { IncomingMessage, ServerResponse } from 'node:http';
import type { Problem } from '../content-check/problem.ts';

/** Holds an answer of 500 back until `findings` are known; where there are none the answer goes out as it is. */
export function standIn(
  request: IncomingMessage,
  response: ServerResponse,
  findings: () => Promise<readonly Problem[]>,
  script: string,
): void {
  if (!(request.headers.accept ?? '').includes('text/html')) return;
  const real = {
    writeHead: response.writeHead.bind(response) as (...args: unknown[]) => ServerResponse,
    write: response.write.bind(response) as (...args: unknown[]) => boolean,
    end: response.end.bind(response) as (...args: unknown[]) => ServerResponse,
  };
  const held: { head?: unknown[]; body: unknown[][] } = { body: [] };
  const broken = (): boolean => response.statusCode >= 500 && !response.headersSent;
  const patch = (name: keyof typeof real, made: (...args: unknown[]) => unknown) =>
    Object.assign(response, { [name]: made });
  patch('writeHead', (...args) => {
    if (typeof args[0] === 'number') response.statusCode = args[0];
    if (!broken()) return real.writeHead(...args);
    held.head = args;
    return response;
  });
  patch('write', (...args) => (broken() ? held.body.push(args) > 0 : real.write(...args)));
  patch('end', (...args) => {
    if (!broken()) return real.end(...args);
    Object.assign(response, real);
    void findings()
      .catch(() => [])
      .then((found) => {
        if (found.length > 0) {
          real.writeHead(500, { 'content-type': 'text/html; charset=utf-8', 'cache-control': 'no-store' });
          return real.end(page(script));
        }
        if (held.head) real.writeHead(...held.head);
        for (const piece of held.body) real.write(...piece);
        return real.end(...args);
      });
    return response;
  });
}

function page(script: string): string {
  return `<!doctype html>
<html lang="en" data-stands-in>
<head><meta charset="utf-8"><meta name="viewport" content="width=device-width">
<meta name="color-scheme" content="light dark"><title>This page cannot be made yet</title><link rel="icon" href="data:,"></head>
<body style="font: 17px/1.5 system-ui, sans-serif; margin: 2rem; max-width: 40rem">
<h1>This page cannot be made yet</h1>
<p>What stands below keeps it. Mend the file and save it: the page comes by itself.</p>
<script type="module" src="${script}"></script>
</body></html>`;
}
