/**
 * npm run pack -- [folder]: puts dist/ into one archive for the stick, named after its edition; the same site gives the
 * same bytes. Without a folder it goes into packs/. Exit: 0 made, 2 refused.
 */
import { createHash } from 'node:crypto';
import { mkdirSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join, relative, resolve } from 'node:path';
import { listFiles } from '../steps/support/files.ts';
import { writeWhole } from '../steps/support/whole-file.ts';
import { zip } from './pack/zip.ts';
import { builtEdition } from './support/built-edition.ts';
import { projectFolder } from './support/command.ts';
import { inWords } from './support/in-words.ts';
import { takeShop } from './support/shop.ts';

/** Folder the archive opens into. */
const top = 'almanac';

async function pack(): Promise<void> {
  takeShop();
  const dist = join(projectFolder, 'dist');
  const built = await builtEdition(projectFolder, dist);
  if (typeof built === 'string') {
    console.error(built);
    process.exitCode = 2;
    return;
  }
  const names = await listFiles(dist);
  const files = await Promise.all(
    names.map(async (name) => ({ name: `${top}/${name}`, bytes: await readFile(join(dist, name)) })),
  );
  const bytes = zip(files, built.edition.slice(0, 10));
  const folder = resolve(process.argv[2] ?? join(projectFolder, 'packs'));
  mkdirSync(folder, { recursive: true });
  const path = join(folder, `${top}-${built.edition}.zip`);
  writeWhole(path, bytes);
  console.log(`Made ${relative(process.cwd(), path)}
edition  ${built.edition}
files    ${files.length}
size     ${(bytes.length / 1e6).toFixed(1)} MB
sha-256  ${createHash('sha256').update(bytes).digest('hex')}
On the stick: open it, then open ${top}/index.html.`);
}

await inWords('Not packed', pack);
