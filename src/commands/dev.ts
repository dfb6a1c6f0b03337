/**
 * npm run dev: a server for writing. Pages, search and the content check's findings follow what is saved.
 * -- --port <number> another port than 4321 (or PORT), --host also for other devices in the house, --verbose all that
 * Astro says. Exit: 2 refused.
 */
import { join } from 'node:path';
import process from 'node:process';
import { parseArgs } from 'node:util';
import { keepCompiled } from '../steps/support/keep-compiled.ts';
import { alreadyRuns, noteRunning, runningServer } from '../steps/support/running-server.ts';
import { changedLast, greeting } from './dev/greeting.ts';
import { projectFolder, silent } from './support/command.ts';
import { readPort } from './support/port.ts';
import { takeShop } from './support/shop.ts';
import { shopFolder, shopNamed } from '../schemas/places.ts';

interface Wanted {
  readonly port: number;
  readonly host: boolean;
  readonly verbose: boolean;
}

/** A sentence when that cannot be. */
function wanted(): Wanted | string {
  try {
    const { values } = parseArgs({
      options: {
        port: { type: 'string', default: process.env['PORT'] ?? '' },
        host: { type: 'boolean', default: false },
        verbose: { type: 'boolean', default: false },
      },
    });
    const read = readPort(values.port);
    if ('problem' in read) return read.problem;
    const running = runningServer(projectFolder);
    return running ? alreadyRuns(running) : { ...values, port: read.port };
  } catch (reason) {
    return (reason as Error).message;
  }
}

async function serve({ port, host, verbose }: Wanted): Promise<void> {
  Object.assign(process.env, silent);
  keepCompiled();
  console.log('One moment: the server for writing starts.');
  // Read here, not by Astro, which would start a server of its own to read it with.
  const [{ dev }, { siteConfig }] = await Promise.all([import('astro'), import('../steps/site-config.ts')]);
  const server = await dev({
    ...siteConfig(),
    root: projectFolder,
    configFile: false,
    server: { port, host },
    // What is wrong in content/ is told by the check, in its own words; Astro's would only stand in its way.
    logLevel: verbose ? 'info' : 'silent',
  });
  const address = `http://localhost:${server.address.port}/`;
  const folder = process.env['SHOP'] ? { folder: join(projectFolder, shopFolder) } : {};
  const forget = noteRunning(projectFolder, { pid: process.pid, address, shop: shopNamed, ...folder });
  const end = () => {
    forget();
    // What it wrote for the search goes with it.
    void server.stop().finally(() => process.exit(0));
  };
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.once(signal, end);
  const last = await changedLast(projectFolder);
  console.log(greeting(address, last));
  // The first page asked for takes seconds, while all it is made of is read; who opens the next a moment later waits less.
  for (const page of [last?.page.slice(1) ?? '', ''])
    await fetch(address + page, { headers: { accept: 'text/html' } }).catch(() => undefined);
}

const asked = wanted();
if (typeof asked === 'string') {
  console.error(asked);
  process.exitCode = 2;
} else {
  takeShop();
  await serve(asked);
}
