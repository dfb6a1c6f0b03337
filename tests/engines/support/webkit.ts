/** WebKit as the distribution ships it, over WebDriver (W3C), on a display that nobody sees. */
import { spawn } from 'node:child_process';
import { createServer, type AddressInfo } from 'node:net';
import type { Tab } from './tab.ts';

export interface WebKitPrograms {
  readonly display: string;
  readonly driver: string;
  readonly browser: string;
}

export async function openWebKit({ display, driver, browser }: WebKitPrograms): Promise<Tab> {
  const port = await freePort();
  // A group of its own, so that display, driver and browser end together.
  const child = spawn(display, ['-a', driver, `--port=${port}`], { detached: true, stdio: 'ignore' });
  const ended = new Promise<void>((done) => child.on('close', () => done()));
  const end = async () => {
    if (child.pid !== undefined && child.exitCode === null) process.kill(-child.pid);
    await ended;
  };
  const ask = async (method: string, path: string, body?: object): Promise<unknown> => {
    const answer = await fetch(`http://127.0.0.1:${port}${path}`, {
      method,
      ...(body && { body: JSON.stringify(body), headers: { 'content-type': 'application/json' } }),
    });
    const { value } = (await answer.json()) as { value: unknown };
    if (!answer.ok) throw new Error(`${path}: ${JSON.stringify(value)}`);
    return value;
  };
  try {
    await until(() => ask('GET', '/status'));
    const alwaysMatch = {
      browserName: 'MiniBrowser',
      'webkitgtk:browserOptions': { binary: browser, args: ['--automation'] },
    };
    const { sessionId } = (await ask('POST', '/session', { capabilities: { alwaysMatch } })) as { sessionId: string };
    const session = `/session/${sessionId}`;
    return {
      open: async (url) => void (await ask('POST', `${session}/url`, { url })),
      run: async (expression) => {
        const script = `return (async () => JSON.stringify((await (${expression})) ?? null))()`;
        return JSON.parse(String(await ask('POST', `${session}/execute/sync`, { script, args: [] }))) as unknown;
      },
      act: async (actions) => void (await ask('POST', `${session}/actions`, { actions })),
      troubles: () => undefined,
      close: async () => {
        await ask('DELETE', session).catch(() => undefined);
        await end();
      },
    };
  } catch (reason) {
    await end();
    throw reason;
  }
}

function freePort(): Promise<number> {
  return new Promise((done, failed) => {
    const server = createServer();
    server.on('error', failed);
    server.listen(0, '127.0.0.1', () => {
      const { port } = server.address() as AddressInfo;
      server.close(() => done(port));
    });
  });
}

/** The driver answers as soon as it listens. */
async function until(work: () => Promise<unknown>): Promise<void> {
  for (let tries = 0; ; tries++)
    try {
      return void (await work());
    } catch (reason) {
      if (tries >= 200) throw reason;
      await new Promise((done) => setTimeout(done, 100));
    }
}
