/** npm start: builds the site and serves it on this machine. PORT names another port. */
import { buildSite, projectFolder } from './support/command.ts';
import { readPort } from './support/port.ts';
import { serveFolder } from './support/serve.ts';

const wanted = readPort(process.env['PORT']);
if ('problem' in wanted) {
  console.error(wanted.problem);
  process.exit(1);
}
const code = await buildSite();
if (code !== 0) process.exit(code);

const { address } = await serveFolder(`${projectFolder}dist`, { port: wanted.port });
console.log(`\nThe site is at ${address}  (stop with Ctrl+C)`);
console.log(`To carry it on a stick, copy the folder dist and open dist/index.html.`);
