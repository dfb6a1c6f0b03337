/** Runs before every command, in plain JavaScript any Node can read: says clearly when Node is too old. */
const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
if (major < 22 || (major === 22 && minor < 18)) {
  console.error(`This project needs Node 22.18 or newer; this is Node ${process.versions.node}.
"npm ci" normally brings Node 24 along for Linux, macOS and Windows on common processors, but found none for this one (${process.platform}-${process.arch}).
Install Node 24 from https://nodejs.org and run the command again.`);
  process.exit(1);
}
