/** npm start: builds the site and serves it on this machine. PORT names another port. */
import { buildSite, projectFolder } from './support/command.ts';
import { serveFolder } from './support/serve.ts';

const code = await buildSite();
if (code !== 0) process.exit(code);

const wanted = Number(process.env['PORT'] ?? 4321);
const { address } = await serveFolder(`${projectFolder}dist`, { port: wanted });
console.log(`\nThe site is at ${address}  (stop with Ctrl+C)`);
console.log(`To carry it on a stick, copy the folder dist and open dist/index.html.`);
