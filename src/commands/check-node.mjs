/**
 * Runs before every command, in plain JavaScript any Node can read: says clearly when Node is too old and, before a
 * command that builds pages (`check-node.mjs pages`), when the folder has a name the bundler cannot read.
 */
import { dirname, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
if (major < 22 || (major === 22 && minor < 18)) {
  console.error(`This project needs Node 22.18 or newer; this is Node ${process.versions.node}.
"npm ci" normally brings a newer one along for Linux, macOS and Windows on common processors, but found none for this one (${process.platform}-${process.arch}).
Install Node 24 or newer from https://nodejs.org and run the command again.`);
  process.exit(1);
}

const folder = resolve(dirname(fileURLToPath(import.meta.url)), '../..');
const sign = /[#%?]/.exec(folder)?.[0];
if (process.argv[2] === 'pages' && sign !== undefined) {
  console.error(`The project stands in ${folder}, and "${sign}" in that path means something else in an address: the pages cannot be built there.
Rename that folder, or move the project, and run the command again. The finished site may stand in any folder.`);
  process.exit(1);
}
